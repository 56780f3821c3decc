package groupwright.definition.ledger;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;

/** Which results a set of changed reads may touch. */
interface Affected {
    /** Whether a settled result may be touched. */
    boolean contains(Derived node);

    /** All results behind these reads; found again when the ledger has computed something since. */
    static Affected allBehind(Set<InputNode> changed, Ledger ledger) {
        return new Affected() {
            private Set<Node> found = behind(changed);
            private long asOf = ledger.computations();

            @Override
            public boolean contains(Derived node) {
                if (asOf != ledger.computations()) { // a result computed since may read one of them
                    found = behind(changed);
                    asOf = ledger.computations();
                }
                return found.contains(node);
            }
        };
    }

    private static Set<Node> behind(Set<InputNode> changed) {
        Set<Node> found = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Node> open = new ArrayDeque<>(changed);
        while (!open.isEmpty()) {
            Node node = open.remove();
            for (int i = 0; i < node.dependentCount(); i++) {
                if (found.add(node.dependent(i))) {
                    open.add(node.dependent(i));
                }
            }
        }
        return found;
    }

    /** Looks from a result towards these reads; cheaper when the reads have many readers. */
    static Affected between(Set<InputNode> changed) {
        Map<Node, Boolean> known = new IdentityHashMap<>();
        return node -> reaches(node, changed, known);
    }

    private static boolean reaches(Node node, Set<InputNode> changed, Map<Node, Boolean> known) {
        if (node instanceof InputNode input) {
            return changed.contains(input);
        }
        Boolean answer = known.get(node);
        if (answer == null) {
            answer = false;
            for (Node input : ((Derived) node).inputs()) {
                answer |= reaches(input, changed, known);
            }
            known.put(node, answer);
        }
        return answer;
    }
}
