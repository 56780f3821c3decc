package groupwright.definition.ledger;

import groupwright.definition.figure.Ask;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answers of a ledger by question: a hash table (open addressing, linear probing) that costs no object an entry. */
final class AnswerTable {
    private AnswerNode[] places = new AnswerNode[64]; // a power of two
    private int size;

    int size() {
        return size;
    }

    Optional<AnswerNode> find(Ask ask) {
        return Optional.ofNullable(places[placeOf(ask)]);
    }

    /** Adds an answer to a question that has none yet. */
    void add(AnswerNode node) {
        if (4 * (size + 1) > 3 * places.length) {
            AnswerNode[] old = places;
            places = new AnswerNode[2 * old.length];
            for (AnswerNode other : old) {
                if (other != null) {
                    places[placeOf(other.ask)] = other;
                }
            }
        }
        places[placeOf(node.ask)] = node;
        size++;
    }

    /** Takes an answer out; says whether it was there. */
    boolean remove(AnswerNode node) {
        int gap = placeOf(node.ask);
        if (places[gap] != node) {
            return false;
        }
        int mask = places.length - 1;
        for (int i = (gap + 1) & mask; places[i] != null; i = (i + 1) & mask) {
            int way = (i - home(places[i].ask)) & mask; // how far it stands from home
            if (way >= ((i - gap) & mask)) { // the gap lies on its way
                places[gap] = places[i];
                gap = i;
            }
        }
        places[gap] = null;
        size--;
        return true;
    }

    /** All answers, in no order. */
    List<AnswerNode> all() {
        List<AnswerNode> all = new ArrayList<>(size);
        for (AnswerNode node : places) {
            if (node != null) {
                all.add(node);
            }
        }
        return all;
    }

    private int home(Ask ask) {
        int mixed = ask.hashCode() * 0x9E3779B1; // questions about neighbouring records have neighbouring hashes
        return (mixed ^ (mixed >>> 15)) & (places.length - 1);
    }

    private int placeOf(Ask ask) {
        int place = home(ask);
        while (places[place] != null && !places[place].ask.equals(ask)) {
            place = (place + 1) & (places.length - 1);
        }
        return place;
    }
}
