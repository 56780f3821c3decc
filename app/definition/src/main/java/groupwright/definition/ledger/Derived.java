package groupwright.definition.ledger;

import java.util.Arrays;

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

    State state = State.NEW;
    Object result = "";
    private Node[] inputs = NOTHING;

    final Node[] inputs() {
        return inputs;
    }

    /** Sets what this was computed from; nothing is rewired where that is the same as before. */
    final void setInputs(Node[] now) {
        if (Arrays.equals(inputs, now)) { // by identity: nodes do not override equals
            return;
        }
        unwire();
        inputs = now;
        for (Node input : now) {
            input.add(this);
        }
    }

    final void unwire() {
        for (Node input : inputs) {
            input.remove(this);
        }
        inputs = NOTHING;
    }
}
