package groupwright.definition.history;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Two sides' changes of one project, joined by address. What only one side changed is taken from it; what both made the same
 * is no conflict; what both changed differently is a conflict, and the merged project keeps ours there.
 *
 * @param merged the project with both sides' changes
 * @param conflicts the places both changed differently, in the order of kinds, ids and fields
 */
public record Merge(Definition merged, List<Conflict> conflicts) {
    public Merge {
        conflicts = List.copyOf(conflicts);
    }

    /**
     * Joins two sides. Costs as much as the records have fields that theirs changed; the rest is shared with ours.
     *
     * @param base what both sides come from
     */
    public static Merge of(Definition base, Definition ours, Definition theirs) {
        Definition merged = ours;
        List<Conflict> conflicts = new ArrayList<>();
        for (Definition.Change change : Definition.changes(base, theirs)) {
            Optional<Entry> own = ours.get(change.id());
            Optional<Entry> joined = joined(change, own, conflicts);
            if (!joined.equals(own)) {
                merged = with(merged, change.id(), joined);
            }
        }
        return new Merge(merged, conflicts);
    }

    /** Fields that are fine apart may break a rule together: then nobody but the user can say what the record should be. */
    private static Optional<Entry> joined(Definition.Change change, Optional<Entry> ours, List<Conflict> conflicts) {
        ThreeWay threeWay = new ThreeWay(change.id());
        try {
            Optional<Object> joined = threeWay.joined(change.before(), ours, change.after(), List.of());
            requireEachCanBeSettled(change, ours, threeWay, joined);
            conflicts.addAll(threeWay.conflicts());
            return joined.map(Entry.class::cast);
        } catch (Invalid together) {
            conflicts.add(new Conflict(
                    Address.of(change.id()),
                    change.before().map(Object.class::cast),
                    ours.map(Object.class::cast),
                    change.after().map(Object.class::cast)));
            return ours;
        }
    }

    /** Else two fields in conflict that a rule ties together could be settled neither one after the other nor at all. */
    private static void requireEachCanBeSettled(
            Definition.Change change, Optional<Entry> ours, ThreeWay threeWay, Optional<Object> joined) {
        if (threeWay.conflicts().isEmpty()) {
            return;
        }
        Optional<Object> mirrored = new ThreeWay(change.id()).joined(change.before(), change.after(), ours, List.of());
        for (Conflict conflict : threeWay.conflicts()) {
            List<String> path = conflict.address().path();
            if (!path.isEmpty()) {
                Taking.taking(joined.orElseThrow(), mirrored.orElseThrow(), path);
                Taking.taking(mirrored.orElseThrow(), joined.orElseThrow(), path);
            }
        }
    }

    private static Definition with(Definition definition, RecordId id, Optional<Entry> record) {
        return record.map(definition::with).orElseGet(() -> definition.without(id));
    }

    /**
     * One side's project with what stands at one address on the other side: how a conflict is settled. Of a list of objects
     * only the order is taken; its objects have addresses of their own.
     *
     * @throws Invalid if the record would break a rule
     */
    public static Definition taking(Definition into, Definition from, Address address) {
        RecordId id = address.record();
        Optional<Entry> here = into.get(id);
        Optional<Entry> there = from.get(id);
        return address.path().isEmpty() || here.isEmpty() || there.isEmpty()
                ? with(into, id, there)
                : into.with((Entry) Taking.taking(here.get(), there.get(), address.path()));
    }
}
