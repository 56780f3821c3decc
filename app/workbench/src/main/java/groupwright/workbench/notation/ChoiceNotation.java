package groupwright.workbench.notation;

import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import java.util.Optional;
import java.util.stream.Collectors;

/** One of a few words. */
record ChoiceNotation(FieldWords words, Component component, FieldType.Choice type) implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(constant -> FieldWords.word((Enum<?>) constant)).orElse("");
    }

    @Override
    public Typed read(String text) {
        String typed = text.strip();
        if (typed.isEmpty() && component.optional() == Component.Presence.OPTIONAL) {
            return Typed.empty();
        }
        for (Enum<?> constant : type.type().getEnumConstants()) {
            if (FieldWords.word(constant).equalsIgnoreCase(typed)) {
                return Typed.of(constant);
            }
        }
        String all = Notations.allowed(type).stream()
                .map(word -> word.toLowerCase(java.util.Locale.ROOT))
                .collect(Collectors.joining(", "));
        return typed.isEmpty()
                ? words.refused("choice.required", FieldWords.label(component), all)
                : words.refused("choice.not", Shortened.of(text), all);
    }
}
