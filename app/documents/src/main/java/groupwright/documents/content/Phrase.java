package groupwright.documents.content;

import groupwright.documents.trace.TraceEntry;
import java.util.List;

/** A line of text made of parts, as it stands in a table cell or a list item. */
public record Phrase(List<Inline> parts) {
    public Phrase {
        parts = List.copyOf(parts);
    }

    public static Phrase of(Inline... parts) {
        return new Phrase(List.of(parts));
    }

    public static Phrase of(String text) {
        return of(new Inline.Plain(text));
    }

    public static Phrase of(TraceEntry entry) {
        return of(Inline.Live.of(entry));
    }
}
