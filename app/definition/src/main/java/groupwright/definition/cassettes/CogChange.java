package groupwright.definition.cassettes;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.ExcludedGear;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import java.util.List;
import java.util.Optional;

/** Other cogs in a concept. */
public final class CogChange {
    private CogChange() {}

    /**
     * With these cogs in a concept. Excluded gears on cogs that are gone are dropped; spacings written one by one become
     * their mean where the number of cogs changes.
     *
     * @throws Invalid if there is no such concept
     */
    public static Definition in(Definition definition, RecordId id, Cassette cassette) {
        Concept concept = definition
                .get(id, Concept.class)
                .orElseThrow(() -> new Invalid("", "there is no concept " + id, "name one of the project"));
        List<Integer> cogs = cassette.cogs().stream().map(Cog::teeth).toList();
        Definition changed = definition;
        List<ExcludedGear> kept = concept.excludedGears().stream()
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
}
