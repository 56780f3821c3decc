package groupwright.drivetrain.wear;

import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.quantity.Bounds;

/**
 * The bending of a chain where it runs on or off a sprocket.
 *
 * <p>Friction of the sideways bend from crossed running is neglected. Design estimates, not proof of conformity.
 */
public final class Articulation {
    private static final int FEWEST_TEETH = 3;
    private static final int MOST_TEETH = 1000;
    private static final double MM_PER_M = 1000;

    private Articulation() {}

    /**
     * Angle by which a link turns against its neighbour when it runs on a sprocket or off it.
     *
     * <p>Formula: 2 pi / z, the outer angle of the polygon of pins (geometry).
     *
     * @param teeth number of teeth z, 3 to 1000
     * @return radians
     * @throws IllegalArgumentException if the tooth count lies outside its range
     */
    public static double angleRad(int teeth) {
        Bounds.count("the number of teeth of a sprocket", teeth, FEWEST_TEETH, MOST_TEETH);
        return 2 * StrictMath.PI / teeth;
    }

    /** Angle in radians by which each link turns under load: off the cog and on the ring, 2 pi / z_cog + 2 pi / z_ring. */
    public static double underLoadRad(Gear gear) {
        return angleRad(gear.cog().teeth()) + angleRad(gear.ring().teeth());
    }

    /**
     * Friction work of one link running on a sprocket or off it: mu · F · r · 2 pi / z.
     *
     * @param friction the chain
     * @param tensionN tension F of the run in N, 0 or more
     * @param teeth number of teeth z, 3 to 1000
     * @return joules
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static double workJ(ChainFriction friction, double tensionN, int teeth) {
        Bounds.notNegative("the tension of a run of chain", tensionN, "N");
        return friction.friction() * tensionN * friction.pinRadiusMm() / MM_PER_M * angleRad(teeth);
    }
}
