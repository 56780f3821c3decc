package groupwright.definition.ledger;

import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All reads that were ever made, findable by record, so that a changed record costs as many looks as reads of it. */
final class InputTable {
    private static final FieldNode[] NONE = {};

    private final Map<RecordId, FieldNode[]> byRecord = new HashMap<>(); // each in the order of the fields' hashes
    private final Map<Read, InputNode> others = new HashMap<>();
    private final List<InputNode> all = new ArrayList<>(); // in the order they were made

    Optional<FieldNode> find(RecordId record, Field<?, ?> field) {
        FieldNode[] nodes = byRecord.getOrDefault(record, NONE);
        for (int i = firstFrom(nodes, field.hashCode());
                i < nodes.length && nodes[i].field.hashCode() == field.hashCode();
                i++) {
            if (nodes[i].field.equals(field)) {
                return Optional.of(nodes[i]);
            }
        }
        return Optional.empty();
    }

    private static int firstFrom(FieldNode[] nodes, int hash) {
        int low = 0;
        int high = nodes.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (nodes[middle].field.hashCode() < hash) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    Optional<InputNode> find(Read read) {
        return read instanceof Read.OfField of
                ? find(of.record(), of.field()).map(InputNode.class::cast)
                : Optional.ofNullable(others.get(read));
    }

    /** Adds a field that was not read before. */
    InputNode add(RecordId record, Field<?, ?> field, Object value) {
        FieldNode node = new FieldNode(record, field, value);
        FieldNode[] old = byRecord.getOrDefault(record, NONE);
        int at = firstFrom(old, field.hashCode());
        FieldNode[] longer = Arrays.copyOf(old, old.length + 1);
        System.arraycopy(old, at, longer, at + 1, old.length - at);
        longer[at] = node;
        byRecord.put(record, longer);
        all.add(node);
        return node;
    }

    /** Adds another read that was not made before. */
    InputNode add(Read read, Object value) {
        InputNode node = new InputNode.Other(read, value);
        others.put(read, node);
        all.add(node);
        return node;
    }

    /** The field reads of a record. */
    List<FieldNode> of(RecordId record) {
        return Arrays.asList(byRecord.getOrDefault(record, NONE));
    }

    /** The reads of circles along a field. */
    List<InputNode> circles(Field<?, ?> field) {
        return others.values().stream()
                .filter(node -> node.read() instanceof Read.Circle circle
                        && circle.next().equals(field))
                .toList();
    }

    int size() {
        return all.size();
    }

    /** The read that was made as the i-th. */
    InputNode get(int i) {
        return all.get(i);
    }

    /** Forgets the reads that no result depends on. */
    void dropUnread() {
        all.removeIf(InputTable::isUnread);
        others.values().removeIf(InputTable::isUnread);
        byRecord.replaceAll((record, nodes) -> Arrays.stream(nodes).anyMatch(InputTable::isUnread)
                ? Arrays.stream(nodes).filter(node -> !isUnread(node)).toArray(FieldNode[]::new)
                : nodes);
        byRecord.values().removeIf(nodes -> nodes.length == 0);
    }

    private static boolean isUnread(InputNode node) {
        return node.dependentCount() == 0;
    }
}
