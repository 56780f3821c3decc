package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Rider, bicycle and luggage as the road feels them.
 *
 * @param massKg total mass in kg, above 0
 * @param rollingCoefficient coefficient of rolling resistance, 0 to 1
 * @param dragAreaM2 drag area Cd · A in m², 0 or more
 * @param wheelDragAreaM2 drag area of the turning spokes in m², 0 or more; 0.0044 in Martin et al. 1998
 * @param bearings drag of the wheel bearings
 * @param efficiency share of the power at the crank that reaches the wheel, 0.5 to 1, taken as constant; in truth it
 *     grows with chain tension and cog size
 */
public record RidingSystem(
        double massKg,
        double rollingCoefficient,
        double dragAreaM2,
        double wheelDragAreaM2,
        BearingDrag bearings,
        double efficiency) {

    /** Throws {@link IllegalArgumentException} if a number lies outside its range. */
    public RidingSystem {
        Bounds.positive("the total mass of rider and bicycle", massKg, "kg");
        Bounds.within("the coefficient of rolling resistance", rollingCoefficient, 0, 1, "");
        Bounds.notNegative("the drag area", dragAreaM2, "m²");
        Bounds.notNegative("the drag area of the wheels", wheelDragAreaM2, "m²");
        Bounds.within("the efficiency of the drivetrain", efficiency, 0.5, 1, "");
    }

    /**
     * A system without drag of spokes and bearings; that drag costs well under 1 % of speed on a climb.
     *
     * <p>The climbing figures of the sample project rest on it, with the sine and cosine of atan(grade). Bearings as
     * measured in 1998 would take its 32 x 45 from 50.0 to 49.9 rpm on 8 %; sin a = grade would take it to 49.8.
     */
    public static RidingSystem plain(double massKg, double rollingCoefficient, double dragAreaM2, double efficiency) {
        return new RidingSystem(massKg, rollingCoefficient, dragAreaM2, 0, BearingDrag.NONE, efficiency);
    }
}
