package groupwright.drivetrain.prediction;

/**
 * Shifts of a ride.
 *
 * @param actions times the rider shifted; rear and front at once are one action
 * @param cogs cogs moved, either way
 * @param front actions that moved the chain to another ring
 */
public record ShiftCount(int actions, int cogs, int front) {}
