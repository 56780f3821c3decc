package groupwright.definition.ledger;

import java.util.Arrays;

/** Something answers depend on: an input or an answer. Knows who depends on it; adding and removing one is O(1). */
abstract class Node {
    private static final Derived[] NOBODY = {};
    private static final int[] NOWHERE = {};

    private Derived[] dependents = NOBODY;
    private int[] edges = NOWHERE; // the position of this node among that dependent's own inputs
    private int count;

    /** Adds a dependent; gives the slot by which it is removed. */
    final int add(Derived dependent, int edge) {
        if (count == dependents.length) {
            int longer = count == 0 ? 1 : count + (count >> 1) + 1;
            dependents = Arrays.copyOf(dependents, longer);
            edges = Arrays.copyOf(edges, longer);
        }
        dependents[count] = dependent;
        edges[count] = edge;
        return count++;
    }

    /** Removes the dependent in a slot; the last one moves into it. */
    final void remove(int slot) {
        count--;
        if (slot != count) {
            dependents[slot] = dependents[count];
            edges[slot] = edges[count];
            dependents[slot].slotMoved(edges[slot], slot);
        }
        dependents[count] = null; // let it go
    }

    final int dependentCount() {
        return count;
    }

    final Derived dependent(int i) {
        return dependents[i];
    }
}
