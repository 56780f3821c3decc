package groupwright.drivetrain.search;

import groupwright.drivetrain.gearing.Cassette;

/**
 * A rule that cassettes have to keep, told by their ends, by single steps, and by pairs of steps that follow each other.
 *
 * <p>A cassette keeps it if all three tests pass. Positions of steps count from 1 at the smallest cog. Numbers typed in
 * percent or millimetres are kept to within 1e-9, so that a limit written in decimals holds for the step it names.
 */
public sealed interface Limit
        permits DriverBody,
                ForbiddenCogs,
                ForcedCogs,
                LargestJump,
                LargestStep,
                StepsByPosition,
                LikePositions,
                WorstMismatch,
                JumpsNeverShrink,
                StepShape {
    /** What rounding may add to a number that was typed in decimals. */
    double SLACK = 1e-9;

    /** The name in commands and files, for example {@code largest-jump}. */
    String id();

    /** What the limit asks, as the predicate of "the cassette must …", for example {@code have the cog 14}. */
    String demand();

    /** Whether a cassette may have these ends. */
    default boolean admitsEnds(int smallest, int largest) {
        return true;
    }

    /** Whether the step at this position may be one between these tooth counts; {@code larger > smaller}. */
    default boolean admitsStep(int position, int smaller, int larger) {
        return true;
    }

    /** Whether these three cogs may follow one another. */
    default boolean admitsPair(int before, int middle, int after) {
        return true;
    }

    /** How far back it looks. */
    default Reach reach() {
        return Reach.STEP;
    }

    /** The same rule as it reads for cassettes with these ends and so many cogs. */
    default Limit forCassettes(int smallest, int largest, int count) {
        return this;
    }

    /** Whether a cassette keeps it. Cost: O(n) in the number of cogs. */
    default boolean admits(Cassette cassette) {
        int[] teeth = cassette.cogs().stream().mapToInt(cog -> cog.teeth()).toArray();
        int last = teeth.length - 1;
        Limit here = forCassettes(teeth[0], teeth[last], teeth.length);
        boolean kept = here.admitsEnds(teeth[0], teeth[last]);
        for (int i = 1; i <= last; i++) {
            kept = kept && here.admitsStep(i, teeth[i - 1], teeth[i]);
        }
        for (int i = 2; i <= last; i++) {
            kept = kept && here.admitsPair(teeth[i - 2], teeth[i - 1], teeth[i]);
        }
        return kept;
    }

    /** What a limit must know to judge a step. */
    enum Reach {
        /** The step alone. */
        STEP,
        /** The step before it too. */
        STEP_BEFORE,
        /** Ends and count of the cassette: the rule is another one for each of them. */
        ENDS
    }
}
