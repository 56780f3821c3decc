package groupwright.workbench.notation;

import groupwright.definition.record.Component;
import java.math.BigDecimal;
import java.util.Optional;

/** Whole numbers. */
record WholeNotation(FieldWords words, Component component) implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(Integer.class::cast).map(whole -> words.number(whole)).orElse("");
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return component.optional() == Component.Presence.OPTIONAL
                    ? Typed.empty()
                    : words.refused("whole.required", FieldWords.label(component), words.example(component));
        }
        NumberText.Result result = NumberText.read(text, words.locale());
        if (result instanceof NumberText.Result.TwoWays ways) {
            return words.refused("number.twoWays", text.strip(), ways.one(), ways.other());
        } else if (result instanceof NumberText.Result.TooLong) {
            return words.refused("number.tooLong");
        } else if (!(result instanceof NumberText.Result.Number number)
                || number.value().scale() > 0) {
            return words.refused("whole.not", Shortened.of(text), words.example(component));
        } else {
            return within(number.value());
        }
    }

    private Typed within(BigDecimal value) {
        double number = value.doubleValue();
        if (number < component.least() || number > component.most()) {
            return words.refused("number.limits", words.number(number), words.limits(component));
        }
        return Math.abs(number) > Integer.MAX_VALUE ? words.refused("number.tooLong") : Typed.of(value.intValueExact());
    }
}
