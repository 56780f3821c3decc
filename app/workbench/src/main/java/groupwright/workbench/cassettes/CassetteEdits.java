package groupwright.workbench.cassettes;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Lifecycle;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Optional;

/** What a found cassette does to the project. */
final class CassetteEdits {
    private CassetteEdits() {}

    /**
     * With these cogs in a concept. Gears left out of use that are gone are dropped; spacings one by one become their mean
     * where the number of cogs changes.
     *
     * @throws Invalid if there is no such concept
     */
    static Definition set(Definition definition, RecordId id, Cassette cassette) {
        Concept concept = definition
                .get(id, Concept.class)
                .orElseThrow(() -> new Invalid("", "there is no concept " + id, "choose another lead concept"));
        List<Integer> cogs = cassette.cogs().stream().map(Cog::teeth).toList();
        Definition changed = definition;
        var kept = concept.excludedGears().stream()
                .filter(gear -> cogs.contains(gear.cog()))
                .toList();
        if (!kept.equals(concept.excludedGears())) {
            changed = changed.with(Address.of(id, "excludedGears"), Optional.of(kept));
        }
        List<Amount> spacing = concept.cogSpacing_mm();
        if (spacing.size() > 1 && cogs.size() != concept.cogs().size()) {
            double mean = spacing.stream().mapToDouble(Amount::value).average().orElseThrow();
            changed = changed.with(Address.of(id, "cogSpacing_mm"), Optional.of(List.of(Amount.of(mean))));
        }
        return changed.with(Address.of(id, "cogs"), Optional.of(cogs));
    }

    /**
     * With a copy of a concept under the next free id that has these cogs.
     *
     * @param title of the copy
     */
    static Definition keep(Definition definition, RecordId id, Cassette cassette, String title) {
        RecordId copy = definition.nextId(RecordKinds.CONCEPT);
        Definition with = set(Lifecycle.duplicate(definition, id), copy, cassette);
        return with.with(Address.of(copy, "title"), Optional.of(title));
    }
}
