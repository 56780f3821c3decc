package groupwright.workbench.cassettes;

/** What can be typed among the limits. */
enum Entry {
    SMALLEST_FROM,
    SMALLEST_TO,
    LARGEST_FROM,
    LARGEST_TO,
    COGS_FROM,
    COGS_TO,
    STEP,
    RINGS,
    STEP_FROM,
    JUMP,
    WITH,
    WITHOUT,
    MISMATCH,
    MISMATCH_FROM,
    POSITIONS,
    POSITIONS_FROM,
    DRIVER
}
