package groupwright.drivetrain.wear;

import groupwright.drivetrain.quantity.Bounds;
import java.util.List;

/**
 * Work pedalled in each gear over a distance, predicted or measured.
 *
 * @param use gears with their work, in any order; a gear may occur more than once
 * @param km the distance in km, coasting included, above 0
 */
public record RiddenGears(List<GearWork> use, double km) {

    /** Copies the list; throws {@link IllegalArgumentException} if the distance is not finite and above 0. */
    public RiddenGears {
        use = List.copyOf(use);
        Bounds.positive("the distance ridden", km, "km");
    }

    /** Work in all gears in J. */
    public double workJ() {
        return use.stream().mapToDouble(GearWork::workJ).sum();
    }
}
