package groupwright.documents.numbers;

import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.record.Invalid;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.ShownValue;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How an author wants one number shown.
 *
 * @param unit symbol of the unit; {@code none} prints the number alone; the figure's own where nothing is said
 * @param decimals from 0 to 6; as many as the figure's resolution fills where nothing is said
 */
public record ShownIn(Optional<String> unit, OptionalInt decimals) {
    /** The word for no unit at all. */
    public static final String NO_UNIT = "none";

    private static final int MOST_DECIMALS = 6;

    /** Whether the author says nothing about it. */
    public boolean isUsual() {
        return unit.isEmpty() && decimals.isEmpty();
    }

    /**
     * The number in that unit and with those decimals.
     *
     * @throws Invalid if the figure's unit cannot be converted to it
     */
    public ShownValue of(Figure figure, Quantity answer, Reader reader) {
        String own = answer.unit().symbol();
        String wanted = unit.filter(symbol -> !symbol.equals(NO_UNIT))
                .orElse(reader.measures().shown(own));
        Conversion conversion = Conversion.between(own, wanted).orElseThrow(() -> refused(figure, own, wanted));
        int usual = Math.max(0, Math.min(MOST_DECIMALS, figure.decimals() + conversion.furtherDecimals()));
        Labels labels = Labels.of(reader.locale());
        String shownUnit = unit.filter(NO_UNIT::equals).isPresent() ? "" : UnitWords.of(wanted, labels);
        String remark = answer.remark().isEmpty() ? "" : "(" + Remarks.of(answer.remark(), labels) + ")";
        return new ShownValue(
                reader.number(conversion.of(answer.value()), decimals.orElse(usual)),
                (shownUnit + " " + remark).strip());
    }

    private static Invalid refused(Figure figure, String own, String wanted) {
        String can = own.isEmpty() ? NO_UNIT : String.join(", ", Conversion.unitsFor(own)) + " or " + NO_UNIT;
        return new Invalid(
                "", figure.id() + " cannot be shown in \"" + wanted + "\"", "write unit= with one of " + can);
    }
}
