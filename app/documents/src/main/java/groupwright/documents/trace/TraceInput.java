package groupwright.documents.trace;

import java.util.Objects;

/**
 * One thing that went into a number.
 *
 * @param label what it is, in words
 * @param shown its value
 * @param address where it is kept, for example {@code C-002.cogs}; empty for a constant of the formula
 */
public record TraceInput(String label, ShownValue shown, String address) {
    public TraceInput {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(shown, "shown");
        Objects.requireNonNull(address, "address");
    }
}
