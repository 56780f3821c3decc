package groupwright.documents.trace;

import java.util.List;

/**
 * All numbers of a document.
 *
 * @param entries in the order of first use, those used only by others last; entry {@code n} is at {@code n - 1}
 */
public record Trace(List<NumberedEntry> entries) {
    public Trace {
        entries = List.copyOf(entries);
    }

    /** The entry with a number. */
    public NumberedEntry entry(int number) {
        return entries.get(number - 1);
    }
}
