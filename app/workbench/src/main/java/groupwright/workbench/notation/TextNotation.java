package groupwright.workbench.notation;

import groupwright.definition.record.Component;
import groupwright.definition.record.FieldType;
import java.util.Optional;

/** Words, as they are. */
record TextNotation(FieldWords words, Component component, FieldType.Text type) implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(String.class::cast).orElse("");
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank() && type.required()) {
            return words.refused("text.required", FieldWords.label(component));
        }
        if (text.isBlank()) {
            return component.optional() == Component.Presence.OPTIONAL ? Typed.empty() : Typed.of("");
        }
        return Typed.of(text.strip());
    }
}
