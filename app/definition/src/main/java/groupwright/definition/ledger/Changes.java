package groupwright.definition.ledger;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds the reads that a change of records may have touched; whoever uses it looks whether their values differ. */
final class Changes {
    private Changes() {}

    /**
     * The known reads worth another look.
     *
     * @param table all reads ever made
     * @param references fields whose reverse was ever read
     * @param circles fields along which circles were ever looked for
     */
    static Set<InputNode> touched(
            List<Definition.Change> changes,
            InputTable table,
            Collection<Field<?, ?>> references,
            Collection<Field<?, ?>> circles) {
        Set<InputNode> touched = new LinkedHashSet<>();
        Set<Field<?, ?>> turned = new LinkedHashSet<>();
        for (Definition.Change change : changes) {
            touched.addAll(table.of(change.id()));
            if (change.before().isEmpty() || change.after().isEmpty()) {
                touched.addAll(membership(change, table));
            }
            Class<?> owner = change.before().or(change::after).orElseThrow().getClass();
            for (Field<?, ?> field : references) {
                if (field.owner() == owner) {
                    for (Optional<RecordId> target : retargeted(field, change)) {
                        table.find(new Read.Referring(field, target)).ifPresent(touched::add);
                    }
                }
            }
            for (Field<?, ?> field : circles) {
                if (field.owner() == owner && !retargeted(field, change).isEmpty()) {
                    turned.add(field);
                }
            }
        }
        turned.forEach(field -> touched.addAll(table.circles(field)));
        return touched;
    }

    /** The targets a record names now and did not before, or the other way round. */
    static List<Optional<RecordId>> retargeted(Field<?, ?> field, Definition.Change change) {
        List<Optional<RecordId>> before = targets(field, change.before());
        List<Optional<RecordId>> after = targets(field, change.after());
        if (before.equals(after)) {
            return List.of();
        }
        List<Optional<RecordId>> either = new ArrayList<>(before);
        either.removeAll(after);
        List<Optional<RecordId>> added = new ArrayList<>(after);
        added.removeAll(before);
        either.addAll(added);
        return either;
    }

    private static List<Optional<RecordId>> targets(Field<?, ?> field, Optional<Entry> entry) {
        return entry.map(e -> References.targets(field, e)).orElse(List.of());
    }

    private static List<InputNode> membership(Definition.Change change, InputTable table) {
        RecordKind<?> kind = RecordKinds.of(change.id()).orElseThrow();
        List<InputNode> nodes = new ArrayList<>();
        table.find(new Read.Presence(change.id())).ifPresent(nodes::add);
        table.find(new Read.Members(kind)).ifPresent(nodes::add);
        int index = change.id().number();
        for (int level = 0; level <= SumNode.TOP; level++) {
            index /= 16;
            table.find(new Read.Block(kind, level, index)).ifPresent(nodes::add);
        }
        return nodes;
    }
}
