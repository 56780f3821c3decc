package groupwright.drivetrain.prediction;

import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.quantity.Bounds;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.BearingDrag;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.Profile;

/**
 * All that a prediction needs.
 *
 * @param terrain the ground
 * @param gears the gears in use
 * @param wheel the driven wheel
 * @param system rider and bicycle
 * @param air the air, the same all the way
 * @param rider how the rider means to ride
 * @param policy when and where he shifts
 */
public record Ride(
        Profile terrain,
        GearSet gears,
        Wheel wheel,
        RidingSystem system,
        Air air,
        RiderPlan rider,
        ShiftPolicy policy) {
    private static final double HEAVIEST_KG = 10_000;
    private static final double LARGEST_M2 = 100;
    private static final double DENSEST_KG_PER_M3 = 10;
    private static final double FASTEST_WIND_MPS = 100;
    private static final double STRONGEST_W = 100_000;
    private static final double MOST_BEARING_N = 10_000;

    /**
     * Throws {@link IllegalArgumentException} if a number is so far from any bicycle that energies could overflow: more
     * than 10 t, 100 m², 10 kg/m³, 100 m/s of wind, 100 kW, or 10 kN of bearing drag at 1 m/s.
     */
    public Ride {
        Bounds.within("the total mass of rider and bicycle", system.massKg(), 0, HEAVIEST_KG, "kg");
        Bounds.within("the drag area", system.dragAreaM2() + system.wheelDragAreaM2(), 0, LARGEST_M2, "m²");
        BearingDrag bearings = system.bearings();
        Bounds.within("the bearing drag", bearings.constantN() + bearings.perSpeedNsPerM(), 0, MOST_BEARING_N, "N");
        Bounds.within("the density of air", air.densityKgPerM3(), 0, DENSEST_KG_PER_M3, "kg/m³");
        Bounds.within("the headwind", air.headwindMps(), -FASTEST_WIND_MPS, FASTEST_WIND_MPS, "m/s");
        for (GradePower power : rider.power()) {
            Bounds.within("the power of the rider", power.crankPowerW(), 0, STRONGEST_W, "W");
        }
    }

    /** A ride with the usual way of shifting. */
    public static Ride of(Profile terrain, GearSet gears, Wheel wheel, RidingSystem system, Air air, RiderPlan rider) {
        return new Ride(terrain, gears, wheel, system, air, rider, ShiftPolicy.USUAL);
    }
}
