package groupwright.drivetrain.derailleur;

/**
 * Straight chain between guide pulley and cog, in links (pitches).
 *
 * @param tipsLinks between the teeth: the span less the tangent to the circle of the tips, sqrt(Ro² - R²), at both
 *     ends; below 0 where the tips of both wheels overlap along the span
 * @param pitchCirclesLinks between the two points where the span touches the pitch circles
 */
public record FreeChain(double tipsLinks, double pitchCirclesLinks) {}
