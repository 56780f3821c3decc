package groupwright.drivetrain.derailleur;

/**
 * Angles over which the chain lies on its wheels, in degrees, each above 0 and below 300.
 *
 * @param ring on the chainring
 * @param cog on the cog
 * @param guide on the guide pulley
 * @param tension on the tension pulley
 */
public record Wraps(double ring, double cog, double guide, double tension) {}
