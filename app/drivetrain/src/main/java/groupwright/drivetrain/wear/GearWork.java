package groupwright.drivetrain.wear;

import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.quantity.Bounds;

/**
 * Work pedalled in one gear.
 *
 * @param gear the gear
 * @param workJ work at the crank in J, 0 or more
 */
public record GearWork(Gear gear, double workJ) {

    /** Throws {@link IllegalArgumentException} if the work is negative or not finite. */
    public GearWork {
        Bounds.notNegative("the work in a gear", workJ, "J");
    }

    boolean isUsed() {
        return workJ > 0;
    }
}
