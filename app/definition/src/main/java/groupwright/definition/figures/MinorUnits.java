package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import java.util.Currency;

/**
 * The currency of the project; records hold its minor units, figures give the major ones.
 *
 * @param code a code of ISO 4217
 */
public record MinorUnits(String code) {
    private static final int USUAL_DIGITS = 2; // codes that Java does not know count in hundredths

    static MinorUnits of(Inputs in) {
        return new MinorUnits(in.get(RecordId.PROJECT, Project.CURRENCY));
    }

    /** An amount of minor units as a quantity in the major unit. */
    Quantity quantity(double minor) {
        return Quantity.of(major(minor), new Unit(code));
    }

    /** The same amount in the major unit. */
    public double major(double minor) {
        double units = 1;
        for (int i = 0; i < digits(); i++) {
            units *= 10;
        }
        return minor / units;
    }

    private int digits() {
        return Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(code))
                .findFirst()
                .map(Currency::getDefaultFractionDigits)
                .filter(digits -> digits >= 0)
                .orElse(USUAL_DIGITS);
    }
}
