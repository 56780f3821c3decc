package groupwright.drivetrain.search;

import java.math.BigDecimal;

/** Numbers in the sentences of limits. */
final class Demands {
    private Demands() {}

    /** A typed number as one would type it: 25, 12.5. */
    static String number(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
        return decimal.toPlainString();
    }

    static String from(int teeth) {
        return teeth == 0 ? "" : " from " + teeth + " teeth on";
    }
}
