package groupwright.drivetrain.derailleur;

/**
 * Cage and chain in one gear.
 *
 * @param cageAngleDeg angle of the cage in degrees: 0 forward, -90 down
 * @param guideMm centre of the guide pulley
 * @param tensionMm centre of the tension pulley
 * @param gap room between guide pulley and cog
 * @param wrapsDeg angles over which the chain lies on its wheels, in degrees
 * @param freeChain straight chain between guide pulley and cog
 * @param lengthPitches length of the path of the chain in pitches
 * @param spans the straight pieces of chain with their tangent points
 */
public record CagePosition(
        double cageAngleDeg,
        Point guideMm,
        Point tensionMm,
        Gap gap,
        Wraps wrapsDeg,
        FreeChain freeChain,
        double lengthPitches,
        Spans spans) {}
