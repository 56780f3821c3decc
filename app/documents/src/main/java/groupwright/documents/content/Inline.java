package groupwright.documents.content;

import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.TraceEntry;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A part of a line of text. */
public sealed interface Inline {
    /** Plain text; nothing in it is read as markup, and white space of any kind becomes one space. */
    record Plain(String text) implements Inline {
        public Plain {
            Objects.requireNonNull(text, "text");
        }
    }

    /**
     * A computed number.
     *
     * @param shown what is printed here, for example without its unit where the column head states it
     * @param entry where it comes from
     */
    record Live(ShownValue shown, TraceEntry entry) implements Inline {
        public Live {
            Objects.requireNonNull(shown, "shown");
            Objects.requireNonNull(entry, "entry");
        }

        /** The number as its entry shows it. */
        public static Live of(TraceEntry entry) {
            return new Live(entry.shown(), entry);
        }
    }

    /** A verdict: mark and word. */
    record Judged(Verdict verdict) implements Inline {
        public Judged {
            Objects.requireNonNull(verdict, "verdict");
        }
    }

    /** Where numbers are shown in the document: pages on paper, links elsewhere; a dash where nowhere. */
    record Places(List<TraceEntry> entries) implements Inline {
        public Places {
            entries = List.copyOf(entries);
        }
    }

    /**
     * A criterion bar, drawn on paper, left out of Markdown.
     *
     * @param margin from the target to the value as a share of the target, good is positive: 0.02 is 2 % to spare
     * @param band the band of the value on the same scale
     * @param verdict decides colour and filling; for a missing input the margin is not drawn
     */
    record Bar(double margin, Optional<Band> band, Verdict verdict) implements Inline {
        public Bar {
            Objects.requireNonNull(band, "band");
            Objects.requireNonNull(verdict, "verdict");
            if (!Double.isFinite(margin)) {
                throw new IllegalArgumentException("margin must be finite, was " + margin);
            }
        }

        /** The bar of a criterion that lacks an input. */
        public static Bar missing() {
            return new Bar(0, Optional.empty(), Verdict.MISSING_INPUT);
        }
    }
}
