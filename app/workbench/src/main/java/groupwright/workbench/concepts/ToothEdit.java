package groupwright.workbench.concepts;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.ExcludedGear;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A new row of teeth for a concept, as one edit of the project. What stands for single wheels follows them: gears that are
 * not used go with their cog and ring, spacings with the gaps.
 */
record ToothEdit(RecordId concept, ToothRow row, List<Integer> teeth) {
    ToothEdit {
        teeth = List.copyOf(teeth);
    }

    /**
     * The project after the edit.
     *
     * @throws Invalid if the concept is gone, or spacings are listed and it is not clear which gap came or went
     */
    Definition of(Definition definition) {
        Concept before = definition
                .get(concept, Concept.class)
                .orElseThrow(() -> new Invalid("", "there is no concept " + concept, "add it first"));
        Map<String, Optional<?>> values = new LinkedHashMap<>();
        values.put(row.field(), Optional.of(teeth));
        if (!before.excludedGears().isEmpty()) {
            values.put("excludedGears", Optional.of(excluded(before)));
        }
        if (row == ToothRow.COGS && before.cogSpacing_mm().size() > 1) {
            values.put("cogSpacing_mm", Optional.of(spacings(before)));
        }
        return ObjectEdit.with(definition, Address.of(concept), values);
    }

    private List<ExcludedGear> excluded(Concept before) {
        List<ExcludedGear> kept = new ArrayList<>();
        for (ExcludedGear gear : before.excludedGears()) {
            int was = row == ToothRow.COGS ? gear.cog() : gear.ring();
            follow(row.of(before), was)
                    .map(now -> row == ToothRow.COGS
                            ? new ExcludedGear(gear.id(), gear.ring(), now)
                            : new ExcludedGear(gear.id(), now, gear.cog()))
                    .ifPresent(kept::add);
        }
        return kept;
    }

    /** What became of a wheel: the same place where none came or went, else the same teeth. */
    private Optional<Integer> follow(List<Integer> before, int was) {
        if (teeth.size() == before.size()) {
            return Optional.of(teeth.get(before.indexOf(was)));
        }
        return teeth.contains(was) ? Optional.of(was) : Optional.empty();
    }

    private List<Amount> spacings(Concept before) {
        List<Amount> spacings = new ArrayList<>(before.cogSpacing_mm());
        List<Integer> cogs = before.cogs();
        int more = teeth.size() - cogs.size();
        if (more == 1) {
            int added = firstDifference(cogs, teeth);
            spacings.add(
                    Math.min(added, spacings.size()), spacings.get(Math.max(0, Math.min(added, spacings.size()) - 1)));
        } else if (more == -1) {
            spacings.remove(Math.min(firstDifference(teeth, cogs), spacings.size() - 1));
        }
        return spacings; // of another length, the concept itself refuses them in words
    }

    /** The place where the longer row has a wheel that the shorter has not. */
    private static int firstDifference(List<Integer> shorter, List<Integer> longer) {
        int place = 0;
        while (place < shorter.size() && shorter.get(place).equals(longer.get(place))) {
            place++;
        }
        return place;
    }
}
