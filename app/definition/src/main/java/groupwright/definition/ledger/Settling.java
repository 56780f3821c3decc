package groupwright.definition.ledger;

import groupwright.definition.figure.Ask;

/** The deepest nesting of questions a ledger answers, and its count. */
final class Settling {
    private final int limit;
    private int depth;

    Settling(int limit) {
        this.limit = limit;
    }

    int limit() {
        return limit;
    }

    /** Says that a question leads back to itself. */
    static IllegalStateException asksItself(Ask ask) {
        return new IllegalStateException("a figure asks itself: " + ask);
    }

    void enter() {
        if (++depth > limit) {
            depth--;
            throw new TooDeep(limit);
        }
    }

    void leave() {
        depth--;
    }

    /** More questions stand inside each other than the ledger's thread has room for. */
    static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1L;

        TooDeep(int limit) {
            super(
                    "questions stand inside each other more than " + limit
                            + " levels deep; records nest too deeply, for example parts within parts",
                    null,
                    false,
                    false);
        }
    }
}
