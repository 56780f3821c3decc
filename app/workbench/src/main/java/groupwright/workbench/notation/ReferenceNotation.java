package groupwright.workbench.notation;

import groupwright.definition.record.Component;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import java.util.List;
import java.util.Optional;

/** A record: shown as id and title, typed as an id, or as words of which one record's title has all. */
record ReferenceNotation(FieldWords words, Component component, RecordKind<?> kind, RecordChoices choices)
        implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(id -> choices.shown((RecordId) id)).orElse("");
    }

    @Override
    public Typed read(String text) {
        if (text.isBlank()) {
            return component.optional() == Component.Presence.OPTIONAL
                    ? Typed.empty()
                    : words.refused("reference.required", FieldWords.label(component), kind.letters() + "-001");
        }
        List<RecordId> meant = choices.meant(text);
        if (meant.size() == 1) {
            return Typed.of(meant.get(0));
        }
        return meant.isEmpty()
                ? words.refused("reference.unknown", kind.noun(), Shortened.of(text), kind.letters() + "-001")
                : words.refused("reference.several", Shortened.of(text), Integer.toString(meant.size()));
    }
}
