package groupwright.drivetrain.search;

/** No jump, counted in teeth, is smaller than the one before it, from the smallest cog up. */
public record JumpsNeverShrink() implements Limit {
    @Override
    public String id() {
        return "jumps-never-shrink";
    }

    @Override
    public String demand() {
        return "have no jump smaller than the one before it";
    }

    @Override
    public boolean admitsPair(int before, int middle, int after) {
        return after - middle >= middle - before;
    }

    @Override
    public Reach reach() {
        return Reach.STEP_BEFORE;
    }
}
