package groupwright.drivetrain.riding;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Roots of functions that do not fall, by halving a bracket until no number lies between its ends. */
final class Root {
    private Root() {}

    static OptionalDouble ofRising(DoubleUnaryOperator rising, double high) {
        return ofRising(rising, 0, high);
    }

    /** The largest known x with f(x) below 0; low itself if f(low) is not below 0; empty if f(high) is below 0. */
    static OptionalDouble ofRising(DoubleUnaryOperator rising, double low, double high) {
        if (rising.applyAsDouble(low) >= 0) {
            return OptionalDouble.of(low);
        }
        if (rising.applyAsDouble(high) < 0) {
            return OptionalDouble.empty();
        }
        double below = low;
        double above = high;
        double middle = (below + above) / 2;
        while (below < middle && middle < above) {
            if (rising.applyAsDouble(middle) < 0) {
                below = middle;
            } else {
                above = middle;
            }
            middle = (below + above) / 2;
        }
        return OptionalDouble.of(middle);
    }
}
