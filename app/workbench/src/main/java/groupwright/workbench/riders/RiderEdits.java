package groupwright.workbench.riders;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Need;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** Edits of this place as functions of the project. */
final class RiderEdits {
    private RiderEdits() {}

    /** A typed value at its field; a wheel sets both of its fields at once. */
    static UnaryOperator<Definition> set(Address at, Optional<?> value) {
        Map<String, Optional<?>> values = at.path().equals(List.of(LineReading.WHEEL))
                ? wheel(value.map(WheelNotation.Wheel.class::cast))
                : Map.of(at.path().get(0), value);
        return definition -> ObjectEdit.with(definition, Address.of(at.record()), values);
    }

    private static Map<String, Optional<?>> wheel(Optional<WheelNotation.Wheel> wheel) {
        return Map.of(
                LineReading.WHEEL,
                wheel.map(WheelNotation.Wheel::tyre),
                "beadSeat_mm",
                wheel.map(WheelNotation.Wheel::beadSeat));
    }

    /**
     * With a draft of a requirement that answers a need. Its statement is what the rider said, in quotation marks: nothing is
     * invented, and the statement checks ask for the rest.
     */
    static Definition answer(Definition definition, RecordId id, String title) {
        Need need = definition
                .get(id, Need.class)
                .orElseThrow(() -> new Invalid("", "there is no need " + id, "it may have been removed"));
        return definition.with(new Requirement(
                definition.nextId(RecordKinds.REQUIREMENT),
                Requirement.Kind.FUNCTION,
                title,
                "“" + need.words() + "”",
                "",
                List.of(id),
                need.riders(),
                List.of(),
                List.of(),
                Requirement.Verification.ANALYSIS,
                5,
                "",
                Requirement.RiderSafety.NO,
                List.of(),
                Requirement.State.DRAFT,
                "",
                ""));
    }
}
