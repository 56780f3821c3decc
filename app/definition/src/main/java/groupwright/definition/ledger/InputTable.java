package groupwright.definition.ledger;

import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All reads that were ever made, findable by record, so that a changed record costs as many looks as reads of it. */
final class InputTable {
    private final Map<RecordId, List<InputNode>> byRecord = new HashMap<>();
    private final Map<Read, InputNode> others = new HashMap<>();

    Optional<InputNode> find(RecordId record, Field<?, ?> field) {
        List<InputNode> nodes = byRecord.get(record);
        if (nodes != null) {
            for (int i = 0; i < nodes.size(); i++) { // few fields of a record are ever read
                if (nodes.get(i).read instanceof Read.OfField known
                        && known.field().equals(field)) {
                    return Optional.of(nodes.get(i));
                }
            }
        }
        return Optional.empty();
    }

    Optional<InputNode> find(Read read) {
        return Optional.ofNullable(others.get(read));
    }

    InputNode add(Read read, Object value) {
        InputNode node = new InputNode(read, value);
        if (read instanceof Read.OfField field) {
            byRecord.computeIfAbsent(field.record(), any -> new ArrayList<>(4)).add(node);
        } else {
            others.put(read, node);
        }
        return node;
    }

    /** The field reads of a record. */
    List<InputNode> of(RecordId record) {
        return byRecord.getOrDefault(record, List.of());
    }

    /** The reads of circles along a field. */
    List<InputNode> circles(Field<?, ?> field) {
        return others.values().stream()
                .filter(node ->
                        node.read instanceof Read.Circle circle && circle.next().equals(field))
                .toList();
    }

    int size() {
        return byRecord.values().stream().mapToInt(List::size).sum() + others.size();
    }
}
