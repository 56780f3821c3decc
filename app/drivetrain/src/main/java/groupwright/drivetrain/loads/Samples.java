package groupwright.drivetrain.loads;

/** What a sample of a load history must keep. */
final class Samples {
    /** Half of the largest number, so that a difference of two samples is still a number. */
    private static final double MOST = Double.MAX_VALUE / 2;

    private Samples() {}

    /**
     * Refuses NaN, the infinities, and numbers so large that a range could become infinite.
     *
     * @param index number of the sample, from 0
     */
    static void check(double value, long index) {
        if (!(Math.abs(value) <= MOST)) { // written so that NaN fails too
            throw new IllegalArgumentException("sample %d of a load history must be a finite number up to %s, was %s"
                    .formatted(index, MOST, value));
        }
    }
}
