package groupwright.workbench.notation;

import groupwright.definition.figure.Parameter;
import java.util.Optional;

/** One parameter of a figure; empty means its usual value, or what the subject holds. */
record ParameterNotation(FieldWords words, Parameter parameter) implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(text -> parameter.type() == Parameter.Type.WORD
                        ? (String) text
                        : words.number(Double.parseDouble((String) text)))
                .orElse("");
    }

    @Override
    public Typed read(String text) {
        String typed = text.strip();
        if (typed.isEmpty()) {
            return parameter.presence() == Parameter.Presence.OPTIONAL
                    ? Typed.empty()
                    : words.refused("parameter.required", parameter.help());
        } else if (parameter.type() == Parameter.Type.WORD) {
            return word(typed);
        }
        NumberText.Result result = NumberText.read(typed, words.locale());
        if (result instanceof NumberText.Result.TwoWays ways) {
            return words.refused("number.twoWays", typed, ways.one(), ways.other());
        } else if (!(result instanceof NumberText.Result.Number number)) {
            return words.refused("number.not", Shortened.of(text), words.text("unit.none"), usual());
        } else {
            return number(number.value());
        }
    }

    private Typed word(String typed) {
        if (typed.chars().anyMatch(Character::isWhitespace)) {
            return words.refused("parameter.word", Shortened.of(typed));
        }
        return parameter.choices().isEmpty() || parameter.choices().contains(typed)
                ? Typed.of(typed)
                : words.refused("parameter.choice", Shortened.of(typed), parameter.limits());
    }

    private Typed number(java.math.BigDecimal value) {
        if (parameter.type() == Parameter.Type.WHOLE && value.scale() > 0) {
            return words.refused("whole.not", words.number(value.doubleValue()), usual());
        }
        return value.doubleValue() >= parameter.least() && value.doubleValue() <= parameter.most()
                ? Typed.of(value.toPlainString())
                : words.refused("number.limits", words.number(value.doubleValue()), parameter.limits());
    }

    private String usual() {
        return parameter.usual().orElse("14");
    }
}
