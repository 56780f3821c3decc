package groupwright.definition.ledger;

import groupwright.definition.record.Amount;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What lies behind an answer. */
final class Trace {
    private Trace() {}

    /** Every read behind an answer, directly or through others. O(answers behind it). */
    static Set<InputNode> reads(Derived node) {
        return reads(node, Collections.newSetFromMap(new IdentityHashMap<>()));
    }

    /**
     * The same.
     *
     * @param seen takes in these reads, the answer, and all results between
     */
    static Set<InputNode> reads(Derived node, Set<Node> seen) {
        Set<InputNode> reads = new LinkedHashSet<>();
        Deque<Node> open = new ArrayDeque<>(List.of((Node) node));
        while (!open.isEmpty()) {
            Node next = open.pop();
            if (!seen.add(next)) {
                continue;
            }
            if (next instanceof InputNode input) {
                reads.add(input);
            } else {
                for (Node input : ((Derived) next).inputs()) {
                    open.push(input);
                }
            }
        }
        return reads;
    }

    /** The fields behind an answer, in the order of addresses. */
    static List<Workings.FieldInput> fields(Derived node) {
        List<Workings.FieldInput> found = new ArrayList<>();
        for (InputNode input : reads(node)) {
            if (input instanceof FieldNode field && input.value != Source.ABSENT) {
                found.add(new Workings.FieldInput(field.read().address(), input.value, field.field.unit()));
            }
        }
        found.sort(Comparator.comparing(Workings.FieldInput::address));
        return found;
    }

    /** The amounts a read gave. */
    static List<Amount> amounts(Object value) {
        if (value instanceof Amount amount) {
            return List.of(amount);
        } else if (value instanceof Optional<?> optional) {
            return optional.map(Trace::amounts).orElse(List.of());
        } else if (value instanceof List<?> list) {
            return list.stream().flatMap(element -> amounts(element).stream()).toList();
        }
        return List.of();
    }
}
