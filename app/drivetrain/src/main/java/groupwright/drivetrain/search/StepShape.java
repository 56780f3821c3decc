package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Step;
import groupwright.drivetrain.quantity.Bounds;
import java.util.Arrays;
import java.util.List;

/** The course that the steps, in percent, take from the smallest cog to the largest. */
public sealed interface StepShape extends Limit {
    @Override
    default String id() {
        return "shape";
    }

    /**
     * All steps are about equal: none is further from the even step than the tolerance.
     *
     * <p>The even step is the one which, repeated as often, covers the same range: 100 · ((largest / smallest)^(1 / (count -
     * 1)) - 1).
     *
     * @param tolerancePoints in percentage points, 0 or more
     */
    record Constant(double tolerancePoints) implements StepShape {
        /** Throws {@link IllegalArgumentException} if the tolerance is negative or not finite. */
        public Constant {
            Bounds.notNegative("the tolerance of a shape", tolerancePoints, "points");
        }

        @Override
        public String demand() {
            return "keep each step within %s points of the even one".formatted(Demands.number(tolerancePoints));
        }

        @Override
        public Reach reach() {
            return Reach.ENDS;
        }

        @Override
        public Limit forCassettes(int smallest, int largest, int count) {
            double even =
                    count < 2 ? 0 : 100 * StrictMath.expm1(StrictMath.log((double) largest / smallest) / (count - 1));
            double[] targets = new double[Math.max(0, count - 1)];
            Arrays.fill(targets, even);
            return Drawn.of(tolerancePoints, targets);
        }
    }

    /**
     * Steps grow, or stay equal: none is smaller than the one before it by more than the tolerance.
     *
     * @param tolerancePoints in percentage points, 0 or more
     */
    record Growing(double tolerancePoints) implements StepShape {
        /** Throws {@link IllegalArgumentException} if the tolerance is negative or not finite. */
        public Growing {
            Bounds.notNegative("the tolerance of a shape", tolerancePoints, "points");
        }

        @Override
        public String demand() {
            return "have no step more than %s points below the one before it"
                    .formatted(Demands.number(tolerancePoints));
        }

        @Override
        public Reach reach() {
            return Reach.STEP_BEFORE;
        }

        @Override
        public boolean admitsPair(int before, int middle, int after) {
            return Step.of(middle, after).pct() >= Step.of(before, middle).pct() - tolerancePoints - SLACK;
        }
    }

    /**
     * Steps follow a drawn line: each is within the tolerance of the target at its position.
     *
     * @param targetsPct target steps in percent, each 0 or more, smallest cog first; positions past the end are free
     * @param tolerancePoints in percentage points, 0 or more
     */
    record Drawn(List<Double> targetsPct, double tolerancePoints) implements StepShape {
        /** Throws {@link IllegalArgumentException} if a number is negative or not finite. */
        public Drawn {
            targetsPct = List.copyOf(targetsPct);
            targetsPct.forEach(target -> Bounds.notNegative("a target step", target, "%"));
            Bounds.notNegative("the tolerance of a shape", tolerancePoints, "points");
        }

        /** A line through these targets. */
        public static Drawn of(double tolerancePoints, double... targetsPct) {
            return new Drawn(Arrays.stream(targetsPct).boxed().toList(), tolerancePoints);
        }

        @Override
        public String demand() {
            return "keep each step within %s points of its target".formatted(Demands.number(tolerancePoints));
        }

        @Override
        public boolean admitsStep(int position, int smaller, int larger) {
            return position > targetsPct.size()
                    || StrictMath.abs(Step.of(smaller, larger).pct() - targetsPct.get(position - 1))
                            <= tolerancePoints + SLACK;
        }
    }
}
