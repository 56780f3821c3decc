package groupwright.documents.html;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths in drawings: hundredths, the same on every machine. */
final class Decimals {
    private Decimals() {}

    static String of(double length) {
        BigDecimal rounded =
                BigDecimal.valueOf(length).setScale(2, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
