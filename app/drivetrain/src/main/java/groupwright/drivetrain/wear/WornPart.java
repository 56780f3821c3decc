package groupwright.drivetrain.wear;

/** The parts whose wear is told apart. */
public enum WornPart {
    /** Each joint of the chain. */
    CHAIN,
    /** Each tooth of the cogs below a stated tooth count. */
    SMALL_COGS,
    /** Each tooth of the cogs from a stated tooth count on. */
    BIG_COGS,
    /** Each tooth of the rings. */
    RINGS
}
