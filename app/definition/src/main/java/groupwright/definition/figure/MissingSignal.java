package groupwright.definition.figure;

/** Ends a computation whose input is missing; carries no stack, because it is an answer and no failure. */
public final class MissingSignal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Missing missing;

    /** The ledger makes these. */
    public MissingSignal(Missing missing) {
        super("missing input", null, false, false);
        this.missing = missing;
    }

    public Missing missing() {
        return missing;
    }
}
