package groupwright.drivetrain.derailleur;

/** What a march has met so far. Angles in radians. */
final class Findings {
    /** Where a chain stops the cage, and the margin that ends there: {@link Sample#FREE} at a stop of the cage. */
    record Edge(double angle, int margin) {}

    private boolean closes;
    private double root;
    private boolean hasPath;
    private boolean isTight;
    private boolean isDecided;
    private Edge edge = new Edge(0, Sample.FREE);
    private int entry = Sample.FREE;
    private int atStart = Sample.FREE;
    private boolean meets;
    private double meetsAt;

    /** The first sample. */
    void start(Sample first) {
        atStart = first.blockedBy;
        if (first.isFree()) {
            passed(first);
        } else {
            blocked(first);
        }
    }

    /** A free sample at which the chain does not close. */
    void passed(Sample sample) {
        if (isDecided) {
            return;
        }
        if (sample.value[Sample.LENGTH] < 0) {
            edge = new Edge(sample.angle, Sample.FREE);
            hasPath = true;
        } else if (sample.value[Sample.LENGTH] > 0) { // a gap lies before it, or nothing at all
            if (!hasPath) {
                edge = new Edge(sample.angle, entry);
                isTight = true;
            }
            hasPath = true;
            isDecided = true;
        }
    }

    void blocked(Sample sample) {
        if (!meets && sample.blockedBy == Sample.GUIDE_COG) {
            meets = true;
            meetsAt = sample.angle;
        }
    }

    /** A stretch without obstacles has begun. */
    void entered(Sample first, int margin) {
        entry = margin;
        passed(first);
    }

    /** A stretch without obstacles has ended. */
    void left(int margin) {
        if (!isDecided) {
            edge = new Edge(edge.angle(), margin);
        }
    }

    void closesAt(double angle) {
        closes = true;
        root = angle;
    }

    boolean closes() {
        return closes;
    }

    double root() {
        return root;
    }

    boolean hasPath() {
        return hasPath;
    }

    /** Whether the chain was too short where a path first came up; else it was too long wherever there was one. */
    boolean isTight() {
        return isTight;
    }

    Edge edge() {
        return edge;
    }

    /** Whether the guide pulley cut into the cog somewhere. */
    boolean meetsCog() {
        return meets;
    }

    double meetsCogAt() {
        return meetsAt;
    }

    /** The first margin not kept at the forward stop. */
    int atStart() {
        return atStart;
    }
}
