package groupwright.benchmarks;

import groupwright.drivetrain.gearing.ShiftPositions;
import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.mass.SprocketMass;
import groupwright.drivetrain.quantity.Cog;
import java.util.stream.IntStream;

/** The steps between cogs in whole numbers as the search counts them, for those who search in other ways. */
final class StepTable {
    final int low;
    final int high;
    final double mostPct;

    StepTable(int low, int high, double mostPct) {
        this.low = low;
        this.high = high;
        this.mostPct = mostPct;
    }

    double pct(int a, int b) {
        return Step.of(a, b).pct();
    }

    boolean admits(int a, int b) {
        return a < b && pct(a, b) <= mostPct;
    }

    long milligrams(int teeth) {
        return SprocketMass.ASSUMED.cogMg(new Cog(teeth));
    }

    /** ln² in 1e-9, mismatch in nm, mass of the larger cog in mg. */
    long[] sums(int a, int b) {
        Step step = Step.of(a, b);
        return new long[] {
            Math.round(1e9 * step.ln() * step.ln()),
            Math.round(1e6 * ShiftPositions.phaseMismatchMm(step)),
            milligrams(b)
        };
    }

    /** All sizes of steps that are admitted, smallest first. */
    double[] sizes() {
        return IntStream.range(low, high)
                .boxed()
                .flatMapToDouble(a -> IntStream.rangeClosed(a + 1, high)
                        .filter(b -> admits(a, b))
                        .mapToDouble(b -> pct(a, b)))
                .distinct()
                .sorted()
                .toArray();
    }
}
