package groupwright.definition.ledger;

import java.util.Arrays;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;

/** Nodes in the order of their first reading, each once. */
final class NodeList {
    private static final int FEW = 16;

    private Node[] nodes = new Node[8];
    private int size;
    private Set<Node> seen = Set.of(); // only kept from the moment there are many

    void add(Node node) {
        if (contains(node)) {
            return;
        }
        if (size == nodes.length) {
            nodes = Arrays.copyOf(nodes, 2 * size);
        }
        nodes[size++] = node;
        if (size == FEW) {
            seen = Collections.newSetFromMap(new IdentityHashMap<>());
            seen.addAll(Arrays.asList(nodes).subList(0, size));
        } else if (size > FEW) {
            seen.add(node);
        }
    }

    private boolean contains(Node node) {
        if (size >= FEW) {
            return seen.contains(node);
        }
        for (int i = 0; i < size; i++) {
            if (nodes[i] == node) {
                return true;
            }
        }
        return false;
    }

    Node[] toArray() {
        return Arrays.copyOf(nodes, size);
    }
}
