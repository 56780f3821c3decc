package groupwright.drivetrain.loads;

/**
 * Lets the reversals of a load history through: its first and last sample, and each sample where rising turns to falling
 * or back. Of repeated values and of points on the way up or down nothing is kept.
 *
 * <p>Holds two numbers, whatever the length of the history; each sample costs the same.
 */
final class TurningPoints {
    private static final int NOTHING = 0;
    private static final int LEVEL = 1;
    private static final int RISING = 2;
    private static final int FALLING = 3;

    private int state = NOTHING;
    private double latest; // a reversal unless the history goes on in the same direction
    private double point;
    private long samples;
    private boolean ended;

    /** Takes the next sample; true if that makes an earlier one a reversal, which {@link #point()} then gives. */
    boolean add(double value) {
        if (ended) {
            throw new IllegalStateException("this load history is finished; count the next one with a new counter");
        }
        Samples.check(value, samples);
        samples++;
        if (state == NOTHING) {
            state = LEVEL;
            latest = value;
            return false;
        }
        if (value == latest) {
            return false;
        }
        int direction = value > latest ? RISING : FALLING;
        boolean turned = direction != state;
        if (turned) {
            point = latest;
            state = direction;
        }
        latest = value;
        return turned;
    }

    /** Ends the history; true if there was any sample, the last of which {@link #point()} then gives as a reversal. */
    boolean end() {
        if (ended) {
            throw new IllegalStateException("this load history is finished already");
        }
        ended = true;
        point = latest;
        return samples > 0;
    }

    double point() {
        return point;
    }

    long samples() {
        return samples;
    }
}
