package groupwright.documents.trace;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * All numbers of a document.
 *
 * @param entries in the order of first use, those used only by others last; entry {@code n} is at {@code n - 1}
 */
public record Trace(List<NumberedEntry> entries) {
    public Trace {
        entries = List.copyOf(entries);
    }

    /**
     * The entries whose answer reads otherwise than in an earlier state of the document: the same question had no such
     * answer there, or was not asked. Questions are compared by the figure grammar, answers by their text with unit, so
     * places that moved make no difference. Cost grows with both traces.
     *
     * @return numbers of entries, in order; those used only by other numbers are among them
     */
    public List<Integer> changedSince(Trace earlier) {
        Set<List<Object>> before = earlier.entries.stream().map(Trace::read).collect(Collectors.toSet());
        return entries.stream()
                .filter(entry -> !before.contains(read(entry)))
                .map(NumberedEntry::number)
                .toList();
    }

    private static List<Object> read(NumberedEntry numbered) {
        return List.of(numbered.entry().id(), numbered.entry().shown());
    }

    /** The entry with a number. */
    public NumberedEntry entry(int number) {
        return entries.get(number - 1);
    }
}
