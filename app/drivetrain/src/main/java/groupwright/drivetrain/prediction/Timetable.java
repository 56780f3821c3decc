package groupwright.drivetrain.prediction;

import java.util.Arrays;

/** When a rider reaches the end of each piece of a profile. */
public final class Timetable {
    private final double[] endS;

    Timetable(double[] endS) {
        this.endS = endS.clone();
    }

    /** Number of pieces. */
    public int size() {
        return endS.length;
    }

    /** Seconds from the start to the end of a piece, counted from 0. */
    public double endS(int piece) {
        return endS[piece];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Timetable table && Arrays.equals(endS, table.endS);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(endS);
    }
}
