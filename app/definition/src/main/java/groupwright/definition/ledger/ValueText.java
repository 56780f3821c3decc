package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Item;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Values as exact texts for machines: the same value always gives the same text. */
public final class ValueText {
    private ValueText() {}

    /** A field's value. */
    public static String of(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.map(ValueText::of).orElse("");
        } else if (value instanceof Amount amount) {
            return amount.isBanded() ? of(amount.value()) + " ± " + of(amount.plusMinus()) : of(amount.value());
        } else if (value instanceof Double number) {
            return number(number);
        } else if (value instanceof List<?> list) {
            return list.stream().map(ValueText::of).collect(Collectors.joining(", "));
        } else if (value instanceof Enum<?> word) {
            return word(word);
        } else if (value instanceof Item item) {
            return item.id();
        }
        return value.toString();
    }

    /** An enum constant as it stands in files: {@code AT_LEAST} is {@code at-least}. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A number in the shortest text that reads back as the same number, without exponent. */
    public static String number(double value) {
        BigDecimal exact = new BigDecimal(Double.toString(value));
        return exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
    }

    /** An answer. */
    public static String of(Answer answer) {
        if (answer instanceof Quantity quantity) {
            return number(quantity.value());
        } else if (answer instanceof Series series) {
            return series.values().stream()
                    .map(at -> at.at() + "=" + number(at.value()))
                    .collect(Collectors.joining(" "));
        } else if (answer instanceof Verdict verdict) {
            return verdict.words();
        } else if (answer instanceof Word word) {
            return word.word();
        }
        return "missing "
                + ((Missing) answer)
                        .inputs().stream().map(i -> i.address().toString()).collect(Collectors.joining(", "));
    }
}
