package groupwright.drivetrain.loads;

/**
 * How often a load crossed a level.
 *
 * @param level the level
 * @param crossings 0 or more
 */
public record LevelCount(double level, long crossings) {}
