package groupwright.documents.trace;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * An entry in the last chapter of a document.
 *
 * @param number its number there, from 1
 * @param entry the entry
 * @param places how often the number stands in the document; 0 if only other numbers rest on it
 * @param restsOn numbers of the entries it uses, in their order
 */
public record NumberedEntry(int number, TraceEntry entry, int places, List<Integer> restsOn) {
    public NumberedEntry {
        Objects.requireNonNull(entry, "entry");
        restsOn = List.copyOf(restsOn);
    }

    /** All places where the number stands, in reading order. */
    public List<Use> uses() {
        return IntStream.rangeClosed(1, places)
                .mapToObj(occurrence -> new Use(number, occurrence))
                .toList();
    }

    /** Name of the anchor at this entry. */
    public String anchor() {
        return Use.entryAnchor(number);
    }
}
