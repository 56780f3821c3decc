package groupwright.benchmarks;

import java.util.Arrays;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.constraints.extension.Tuples;
import org.chocosolver.solver.variables.IntVar;

/**
 * The question as a model of the constraint solver choco: each step is a row of a table, the objectives are sums and a
 * maximum.
 *
 * <p>Its whole numbers end at 21 million, so that ln² is counted in 1e-7, mismatch in 100 nm.
 */
final class ConstraintSolver {
    private final StepTable table;
    private final int cogs;

    ConstraintSolver(StepTable table, int cogs) {
        this.table = table;
        this.cogs = cogs;
    }

    int values() {
        Model model = new Model();
        IntVar[] cog = model.intVarArray("cog", cogs, table.low, table.high);
        cog[0].eq(table.low).post();
        cog[cogs - 1].eq(table.high).post();
        Tuples steps = steps();
        IntVar[][] step = new IntVar[4][cogs - 1];
        for (int i = 0; i < cogs - 1; i++) {
            for (int k = 0; k < 4; k++) {
                step[k][i] = model.intVar("step-" + k + "-" + i, 0, most(steps, k + 2));
            }
            IntVar[] row = {cog[i], cog[i + 1], step[0][i], step[1][i], step[2][i], step[3][i]};
            model.table(row, steps).post();
        }
        IntVar[] objectives = model.intVarArray("objective", 4, 0, 20_000_000);
        model.max(objectives[0], step[0]).post();
        for (int k = 1; k < 4; k++) {
            model.sum(step[k], "=", objectives[k]).post();
        }
        return model.getSolver().findParetoFront(objectives, Model.MINIMIZE).size();
    }

    private Tuples steps() {
        double[] sizes = table.sizes();
        Tuples steps = new Tuples(true);
        for (int a = table.low; a < table.high; a++) {
            for (int b = a + 1; b <= table.high; b++) {
                if (table.admits(a, b)) {
                    long[] sums = table.sums(a, b);
                    steps.add(
                            a,
                            b,
                            Arrays.binarySearch(sizes, table.pct(a, b)),
                            (int) (sums[0] / 100),
                            (int) (sums[1] / 100),
                            (int) sums[2]);
                }
            }
        }
        return steps;
    }

    private static int most(Tuples steps, int column) {
        int most = 0;
        for (int i = 0; i < steps.nbTuples(); i++) {
            most = Math.max(most, steps.get(i)[column]);
        }
        return most;
    }
}
