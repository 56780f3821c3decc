package groupwright.documents.numbers;

import groupwright.definition.figures.MinorUnits;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Amount;
import groupwright.documents.trace.ShownValue;
import java.util.Optional;

/** Fields that went into an answer, as people read them: money is kept in minor units and read in major ones. */
public final class InputText {
    /** The unit that fields of money show. */
    private static final String MINOR = "minor units";

    private final AnswerText text;
    private final String currency;

    /** @param currency code after ISO 4217 */
    public InputText(AnswerText text, String currency) {
        this.text = text;
        this.currency = currency;
    }

    /** A field as it went in. */
    public ShownValue of(Workings.FieldInput input) {
        return of(input.value(), input.unit());
    }

    /** A value of a field with that field's unit. */
    public ShownValue of(Object value, String unit) {
        if (!unit.equals(MINOR)) {
            return text.input(value, unit);
        }
        MinorUnits units = new MinorUnits(currency);
        Object bare = value instanceof Optional<?> optional && optional.isPresent() ? optional.get() : value;
        return bare instanceof Amount amount
                ? text.input(new Amount(units.major(amount.value()), units.major(amount.plusMinus())), currency)
                : text.input(value, "");
    }
}
