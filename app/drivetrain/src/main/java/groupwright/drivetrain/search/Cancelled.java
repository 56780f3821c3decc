package groupwright.drivetrain.search;

/** A search was stopped by its {@link Progress} before it had an answer. */
public final class Cancelled extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Cancelled() {
        super("the search for cassettes was cancelled");
    }
}
