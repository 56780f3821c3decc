package groupwright.definition.ledger;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Set;

/** Which settled results a set of changed reads touches. */
final class Affected {
    private final Set<InputNode> changed;
    private final Set<Node> found;
    private final Ledger ledger;
    private final long asOf; // what the ledger computed later may read a changed one and not be among the found
    private final Map<Node, Boolean> known = new IdentityHashMap<>(); // holds as long as the ledger does not move

    private Affected(Set<InputNode> changed, Set<Node> found, Ledger ledger, long asOf) {
        this.changed = changed;
        this.found = found;
        this.ledger = ledger;
        this.asOf = asOf;
    }

    /**
     * Looks from these reads to all results behind them, once; cheap where little is touched and much is asked.
     *
     * @param changed may grow by reads the ledger makes later
     */
    static Affected allBehind(Set<InputNode> changed, Ledger ledger) {
        return new Affected(changed, behind(changed), ledger, ledger.computations());
    }

    /** Looks from each result towards these reads; cheap where the reads have many readers and little is asked. */
    static Affected between(Set<InputNode> changed, Ledger ledger) {
        return new Affected(changed, Set.of(), ledger, -1);
    }

    /** Whether a settled result is touched; may say so too where the result was settled anew since and no longer is. */
    boolean contains(Derived node) {
        return found.contains(node) || (asOf != ledger.computations() && reaches(node));
    }

    private static Set<Node> behind(Set<InputNode> changed) {
        Set<Node> found = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Node> open = new ArrayDeque<>(changed);
        while (!open.isEmpty()) {
            Node node = open.remove();
            node.forEachDependent(dependent -> {
                if (found.add(dependent)) {
                    open.add(dependent);
                }
            });
        }
        return found;
    }

    /** Without recursion, because results may stand behind each other deeper than the stack. */
    private boolean reaches(Derived start) {
        Deque<Derived> open = new ArrayDeque<>();
        open.push(start);
        while (!open.isEmpty()) {
            Derived node = open.peek();
            if (known.containsKey(node)) {
                open.pop();
            } else if (touches(node)) {
                known.put(open.pop(), true);
            } else if (!pushUnknown(node, open)) {
                known.put(open.pop(), false);
            }
        }
        return known.get(start);
    }

    private boolean touches(Derived node) {
        for (Node input : node.inputs()) {
            if (input instanceof InputNode read ? changed.contains(read) : known.getOrDefault(input, false)) {
                return true;
            }
        }
        return false;
    }

    private boolean pushUnknown(Derived node, Deque<Derived> open) {
        boolean any = false;
        for (Node input : node.inputs()) {
            if (input instanceof Derived derived && !known.containsKey(derived)) {
                open.push(derived);
                any = true;
            }
        }
        return any;
    }
}
