package groupwright.workbench.notation;

import groupwright.definition.record.RecordId;
import java.util.Optional;

/** A record's own id, which stays for ever. */
record OwnIdNotation(FieldWords words) implements Notation {
    @Override
    public String shown(Optional<?> value) {
        return value.map(Object::toString).orElse("");
    }

    @Override
    public Typed read(String text) {
        return RecordId.parse(text.strip()).<Typed>map(Typed::of).orElseGet(() -> words.refused("ownId"));
    }
}
