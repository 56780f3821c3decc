package groupwright.definition.ledger;

import java.util.Arrays;
import java.util.function.Consumer;

/**
 * Something answers depend on: an input or an answer. Knows who depends on it: few in a list, many in a hash table by
 * identity (open addressing, linear probing), so that adding and removing one is O(1) and costs no object.
 */
abstract class Node {
    private static final Derived[] NOBODY = {};
    private static final int FEW = 16;

    private Derived[] dependents = NOBODY; // a list up to FEW places, a table of a power of two above
    private int count;

    /** Adds a dependent that is not there yet. */
    final void add(Derived dependent) {
        if (isTable()) {
            if (3 * (count + 1) > 2 * dependents.length) {
                rehash(2 * dependents.length);
            }
            dependents[placeOf(dependent)] = dependent;
        } else if (count == FEW) {
            rehash(4 * FEW);
            dependents[placeOf(dependent)] = dependent;
        } else {
            if (count == dependents.length) {
                dependents = Arrays.copyOf(dependents, Math.min(FEW, count + (count >> 1) + 1));
            }
            dependents[count] = dependent;
        }
        count++;
    }

    /** Removes a dependent. */
    final void remove(Derived dependent) {
        count--;
        if (!isTable()) {
            int at = Arrays.asList(dependents).indexOf(dependent);
            dependents[at] = dependents[count];
            dependents[count] = null; // let it go
        } else if (8 * count < dependents.length && dependents.length > 4 * FEW) {
            dependents[placeOf(dependent)] = null;
            rehash(dependents.length / 4);
        } else {
            close(placeOf(dependent));
        }
    }

    private boolean isTable() {
        return dependents.length > FEW;
    }

    private void rehash(int length) {
        Derived[] old = dependents;
        dependents = new Derived[length];
        for (Derived dependent : old) {
            if (dependent != null) {
                dependents[placeOf(dependent)] = dependent;
            }
        }
    }

    private int home(Derived dependent) {
        return System.identityHashCode(dependent) & (dependents.length - 1);
    }

    /** Where a dependent stands in the table, or would. */
    private int placeOf(Derived dependent) {
        int place = home(dependent);
        while (dependents[place] != null && dependents[place] != dependent) {
            place = (place + 1) & (dependents.length - 1);
        }
        return place;
    }

    /** Empties a place of the table and closes the gap, so that no search stops there too early. */
    private void close(int gap) {
        int mask = dependents.length - 1;
        int open = gap;
        for (int i = (gap + 1) & mask; dependents[i] != null; i = (i + 1) & mask) {
            int way = (i - home(dependents[i])) & mask; // how far it stands from home
            if (way >= ((i - open) & mask)) {
                dependents[open] = dependents[i];
                open = i;
            }
        }
        dependents[open] = null;
    }

    final int dependentCount() {
        return count;
    }

    /** How many places are looked at to find a dependent; tests hold this against growth. */
    final int looksFor(Derived dependent) {
        return isTable() ? 1 + ((placeOf(dependent) - home(dependent)) & (dependents.length - 1)) : count;
    }

    /** All dependents, in no order. */
    final void forEachDependent(Consumer<Derived> action) {
        for (Derived dependent : dependents) {
            if (dependent != null) {
                action.accept(dependent);
            }
        }
    }
}
