package groupwright.documents.numbers;

import groupwright.definition.record.Amount;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.ShownValue;
import java.util.Objects;
import java.util.Optional;

/**
 * Numbers of one unit as one reader sees them: in the unit of their measures and the words of their language. A converted
 * number has so many decimals that its last one is no coarser than that of the number it comes from, and less than ten
 * times as fine.
 */
public final class Measured {
    private final Reader reader;
    private final String unit;
    private final Optional<Conversion> conversion;

    Measured(Reader reader, String kept) {
        Objects.requireNonNull(reader, "reader");
        this.reader = reader;
        this.unit = UnitWords.of(reader.measures().shown(kept), Labels.of(reader.locale()));
        this.conversion = reader.measures().from(kept);
    }

    /** The unit as it stands behind the number. */
    public String unit() {
        return unit;
    }

    /** A number with a fixed count of decimals, counted in the unit it is kept in. */
    public String number(double value, int decimals) {
        return reader.number(converted(value), shownDecimals(value, decimals));
    }

    /** A number with its sign always shown, as margins are. */
    public String signed(double value, int decimals) {
        return reader.signed(converted(value), shownDecimals(value, decimals));
    }

    /** A number with as many decimals as it needs in the unit it is kept in. */
    public String exact(double value) {
        return conversion.isEmpty() ? reader.exact(value) : number(value, Reader.decimals(value));
    }

    /** An amount of a record, with what it may be off by. */
    public String amount(Amount amount) {
        if (conversion.isEmpty() || !amount.isBanded()) {
            String text = exact(amount.value());
            return amount.isBanded() ? text + " ± " + exact(amount.plusMinus()) : text;
        }
        int decimals = Math.max(Reader.decimals(amount.value()), Reader.decimals(amount.plusMinus()));
        return number(amount.value(), decimals) + " ± " + number(amount.plusMinus(), decimals);
    }

    /** A number with its unit in one text. */
    public String text(double value, int decimals) {
        return with(number(value, decimals)).text();
    }

    /** A text that was made here with its unit. */
    public ShownValue with(String number) {
        return new ShownValue(number, unit);
    }

    /** A number that is kept in the other unit, in the one shown. */
    public double converted(double value) {
        return conversion.map(way -> way.of(value)).orElse(value);
    }

    /** Of a number that is shown as it was entered, those it was entered with are counted. */
    private int shownDecimals(double value, int decimals) {
        if (conversion.isEmpty()) {
            return decimals;
        }
        int kept = decimals > Reader.MOST_PADDED ? Math.min(decimals, Reader.decimals(value)) : decimals;
        return Math.max(0, kept + conversion.get().furtherDecimals());
    }
}
