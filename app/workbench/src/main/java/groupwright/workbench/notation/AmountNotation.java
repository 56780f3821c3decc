package groupwright.workbench.notation;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers with an optional band: {@code 95} or {@code 95 ± 2}, with or without the unit behind them. */
record AmountNotation(FieldWords words, Component component, String unit) implements Notation {
    private static final Pattern BAND = Pattern.compile("\\s*(?:±|\\+/-|\\+-)\\s*");

    @Override
    public String shown(Optional<?> value) {
        return value.map(Amount.class::cast)
                .map(amount -> words.number(amount.value())
                        + (amount.isBanded() ? " ± " + words.number(amount.plusMinus()) : ""))
                .orElse("");
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return component.optional() == Component.Presence.OPTIONAL
                    ? Typed.empty()
                    : words.refused(
                            "number.required", FieldWords.label(component), words.kindOfNumber(unit), example());
        }
        String[] parts = BAND.split(withoutUnit(text.strip()), -1);
        if (parts.length > 2) {
            return notANumber(text);
        }
        NumberText.Result value = NumberText.read(parts[0], words.locale());
        NumberText.Result band =
                parts.length == 1 ? NumberText.read("0", words.locale()) : NumberText.read(parts[1], words.locale());
        if (value instanceof NumberText.Result.Number number && band instanceof NumberText.Result.Number around) {
            return amount(number.value().doubleValue(), around.value().doubleValue());
        }
        return refused(text, value instanceof NumberText.Result.Number ? band : value);
    }

    private String withoutUnit(String text) {
        return !unit.isEmpty() && text.endsWith(unit)
                ? text.substring(0, text.length() - unit.length()).strip()
                : text;
    }

    private Typed amount(double value, double plusMinus) {
        if (plusMinus < 0) {
            return words.refused("number.band");
        }
        return value >= component.least() && value <= component.most()
                ? Typed.of(new Amount(value, plusMinus))
                : words.refused("number.limits", words.number(value), words.limits(component));
    }

    private Typed refused(String text, NumberText.Result result) {
        if (result instanceof NumberText.Result.TwoWays ways) {
            return words.refused("number.twoWays", text.strip(), ways.one(), ways.other());
        } else if (result instanceof NumberText.Result.TooLong) {
            return words.refused("number.tooLong");
        }
        return notANumber(text);
    }

    private Typed notANumber(String text) {
        return words.refused("number.not", Shortened.of(text), words.kindOfNumber(unit), example());
    }

    private String example() {
        return words.example(component);
    }
}
