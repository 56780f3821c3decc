package groupwright.drivetrain.search;

/** A question that no cassette can answer, or that is too large; the message is one sentence with what to do. */
public final class Contradiction extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    Contradiction(String sentence, Object... values) {
        super(sentence.formatted(values));
    }
}
