package groupwright.workbench.cassettes;

import groupwright.definition.cassettes.CogChange;
import groupwright.definition.cassettes.DecisionDraft;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Lifecycle;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Objective;
import java.util.List;
import java.util.Optional;

/** What a found cassette does to the project. */
final class CassetteEdits {
    private CassetteEdits() {}

    /**
     * With a copy of a concept under the next free id that has these cogs.
     *
     * @param title of the copy
     */
    static Definition keep(Definition definition, RecordId id, Cassette cassette, String title) {
        RecordId copy = definition.nextId(RecordKinds.CONCEPT);
        Definition with = CogChange.in(Lifecycle.duplicate(definition, id), copy, cassette);
        return with.with(Address.of(copy, "title"), Optional.of(title));
    }

    /** With a decision drafted between the cogs of today and others; nothing is chosen in it. */
    static Definition draft(
            Definition definition, RecordId id, List<Objective> objectives, Found today, List<Found> others) {
        RecordId next = definition.nextId(RecordKinds.DECISION);
        return definition.with(DecisionDraft.of(next, id, objectives, today, others));
    }
}
