package groupwright.definition.ledger;

/** A result computed from inputs and other results. */
abstract class Derived extends Node {
    /** How far a result can be trusted. */
    enum State {
        /** Never computed. */
        NEW,
        /** Being computed now. */
        COMPUTING,
        /** Holds. */
        SETTLED,
        /** Something further back changed; holds if its own inputs turn out equal. */
        MAYBE_STALE,
        /** An own input changed. */
        STALE
    }

    private static final Node[] NOTHING = {};
    private static final int[] NOWHERE = {};

    State state = State.NEW;
    Object result = "";
    private Node[] inputs = NOTHING;
    private int[] slots = NOWHERE; // where this stands among each input's dependents

    final Node[] inputs() {
        return inputs;
    }

    final void slotMoved(int edge, int slot) {
        slots[edge] = slot;
    }

    /** Sets what this was computed from; nothing is rewired where that is the same as before. */
    final void setInputs(Node[] now) {
        if (java.util.Arrays.equals(inputs, now)) { // by identity: nodes do not override equals
            return;
        }
        unwire();
        inputs = now;
        slots = new int[now.length];
        for (int i = 0; i < now.length; i++) {
            slots[i] = now[i].add(this, i);
        }
    }

    final void unwire() {
        for (int i = 0; i < inputs.length; i++) {
            inputs[i].remove(slots[i]);
        }
        inputs = NOTHING;
        slots = NOWHERE;
    }
}
