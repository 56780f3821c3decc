package groupwright.documents.trace;

import java.util.List;
import java.util.Objects;

/**
 * Where one number comes from. Texts that do not apply are empty.
 *
 * @param figure the figure's name in words, for example {@code Gear range}
 * @param id the question in the figure grammar, for example {@code gear-range C-002}
 * @param subject what it is asked of, for example {@code C-002}
 * @param shown the answer with its unit
 * @param formula the formula in symbols
 * @param inputs what went in, in reading order
 * @param uses the other answers it rests on, in reading order; the graph has no loops, since entries are immutable
 * @param band how well the answer is known, in words
 * @param source where the formula is published
 * @param leavesOut what the formula neglects
 * @param formulaVersion at least 1
 * @param requirements ids of the requirements that ask for it
 */
public record TraceEntry(
        String figure,
        String id,
        String subject,
        ShownValue shown,
        String formula,
        List<TraceInput> inputs,
        List<TraceEntry> uses,
        String band,
        String source,
        String leavesOut,
        int formulaVersion,
        List<String> requirements) {
    public TraceEntry {
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(shown, "shown");
        Objects.requireNonNull(formula, "formula");
        Objects.requireNonNull(band, "band");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(leavesOut, "leavesOut");
        if (figure.isBlank() || id.isBlank()) {
            throw new IllegalArgumentException(
                    "a trace entry needs a figure name and an id, had \"" + figure + "\" and \"" + id + "\"");
        }
        if (formulaVersion < 1) {
            throw new IllegalArgumentException("formula version must be at least 1, was " + formulaVersion);
        }
        inputs = List.copyOf(inputs);
        uses = List.copyOf(uses);
        requirements = List.copyOf(requirements);
    }

    /** The figure's name with what it is asked of. */
    public String title() {
        return subject.isEmpty() ? figure : figure + ", " + subject;
    }

    /** Two entries with the same key are the same number; a milestone's value of the same figure is another one. */
    Key key() {
        return new Key(id, shown, formulaVersion);
    }

    record Key(String id, ShownValue shown, int formulaVersion) {}
}
