package groupwright.workbench.components;

import java.util.Objects;
import java.util.Optional;

/**
 * How well a value is known: its band with the value in it, and the target where there is one.
 *
 * @param lowText how the low end is written
 * @param highText how the high end is written, with the unit
 * @param name for those who do not see it
 */
public record Known(
        double low, double high, double value, Optional<Target> target, String lowText, String highText, String name) {
    /**
     * The target.
     *
     * @param word what stands at its upright
     */
    public record Target(double at, String word) {
        public Target {
            Objects.requireNonNull(word, "word");
            if (!Double.isFinite(at)) {
                throw new IllegalArgumentException("a target must be finite, was " + at);
            }
        }
    }

    public Known {
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(lowText, "lowText");
        Objects.requireNonNull(highText, "highText");
        Objects.requireNonNull(name, "name");
        if (!(low <= value && value <= high && Double.isFinite(high - low))) {
            throw new IllegalArgumentException("no band from " + low + " to " + high + " around " + value);
        }
    }
}
