package groupwright.drivetrain.derailleur;

/** What the march knows at one angle of the cage: margins that must stay above 0, the length, and their slopes. */
final class Sample {
    static final int GUIDE_COG = 0;
    static final int GUIDE_RING = 1;
    static final int TENSION_COG = 2;
    static final int TENSION_RING = 3;
    static final int OVERLAPS = 4; // the first margins are squared distances in mm², the next four wraps
    static final int MARGINS = 8;
    static final int LENGTH = 8; // pitches beyond the length of the chain
    static final int FREE = -1;

    final double[] value = new double[MARGINS + 1];
    final double[] slope = new double[MARGINS + 1];
    double angle;
    /** Index of the first margin that is not above 0, {@link #FREE} if all are. */
    int blockedBy;

    boolean isFree() {
        return blockedBy == FREE;
    }
}
