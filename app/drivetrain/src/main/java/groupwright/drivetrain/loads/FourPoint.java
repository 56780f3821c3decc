package groupwright.drivetrain.loads;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * Counts the closed cycles of a load history by the four-point method and keeps the rest as a residue.
 *
 * <p>Rule: of four reversals in a row, the middle two are a cycle and leave the history if neither range beside them is
 * smaller than theirs. Counting the ranges of the residue as half cycles gives the counts of {@link Rainflow}; unlike
 * there, nothing depends on where the history starts, so that residues of repeated histories can be joined and counted on.
 *
 * <p>Source: common practice, no source read; its equality with ASTM E1049-85, section 5.4.4, is tested.
 *
 * <p>Memory: the ranges of the residue grow, then shrink, so L different values leave at most 2 L reversals. Each sample
 * costs the same, averaged over the history. Design estimate, not proof of conformity.
 */
public final class FourPoint {
    private static final int USUAL_DEPTH = 64;

    private final TurningPoints turning = new TurningPoints();
    private final CycleSink closed;
    private double[] rest = new double[USUAL_DEPTH];
    private int depth;

    /** A counter at the start of a history. */
    public FourPoint(CycleSink closed) {
        this.closed = Objects.requireNonNull(closed, "a four-point counter needs a sink");
    }

    /**
     * Takes the next sample.
     *
     * @throws IllegalArgumentException if it is NaN, infinite or beyond half the largest number
     * @throws IllegalStateException if the history is finished
     */
    public void add(double sample) {
        if (turning.add(sample)) {
            reversal(turning.point());
        }
    }

    /**
     * Ends the history.
     *
     * @return the residue: the reversals left when all closed cycles are taken out
     * @throws IllegalStateException if the history is finished already
     */
    public List<Double> finish() {
        if (turning.end()) {
            reversal(turning.point());
        }
        List<Double> residue = new ArrayList<>(depth);
        for (int i = 0; i < depth; i++) {
            residue.add(rest[i]);
        }
        return List.copyOf(residue);
    }

    private void reversal(double load) {
        if (depth == rest.length) {
            rest = Arrays.copyOf(rest, 2 * depth);
        }
        rest[depth++] = load;
        while (depth >= 4 && isClosed()) {
            double from = rest[depth - 3];
            double to = rest[depth - 2];
            closed.accept(Math.abs(to - from), (from + to) / 2, 1);
            rest[depth - 3] = rest[depth - 1];
            depth -= 2;
        }
    }

    private boolean isClosed() {
        double middle = Math.abs(rest[depth - 2] - rest[depth - 3]);
        return middle <= Math.abs(rest[depth - 3] - rest[depth - 4])
                && middle <= Math.abs(rest[depth - 1] - rest[depth - 2]);
    }
}
