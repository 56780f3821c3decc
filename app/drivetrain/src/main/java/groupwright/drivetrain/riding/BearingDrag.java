package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * Drag of the wheel bearings: constant + slope · speed, in N.
 *
 * @param constantN part that does not change with speed, in N, 0 or more
 * @param perSpeedNsPerM part that grows with speed, in N·s/m, 0 or more
 */
public record BearingDrag(double constantN, double perSpeedNsPerM) {
    /** No bearing drag. */
    public static final BearingDrag NONE = new BearingDrag(0, 0);

    /** The wheels measured by Martin et al., J. Applied Biomechanics 14(3), 1998: 91e-3 N and 8.7e-3 N·s/m. */
    public static final BearingDrag MARTIN_1998 = new BearingDrag(91e-3, 8.7e-3);

    /** Throws {@link IllegalArgumentException} if a number is negative or not finite. */
    public BearingDrag {
        Bounds.notNegative("the constant bearing drag", constantN, "N");
        Bounds.notNegative("the bearing drag per speed", perSpeedNsPerM, "N·s/m");
    }

    double forceN(double speedMps) {
        return constantN + perSpeedNsPerM * speedMps;
    }
}
