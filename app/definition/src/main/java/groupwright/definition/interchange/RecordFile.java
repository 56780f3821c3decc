package groupwright.definition.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import java.util.List;
import java.util.Optional;

/** Reads one record from the bytes of its file. */
public final class RecordFile {
    private RecordFile() {}

    /** The record, or everything that is wrong with the file. */
    public record Outcome(Optional<Entry> record, List<Problem> problems) {}

    /**
     * Reads a file.
     *
     * @param kind what the folder holds
     * @param file path inside the project, for problems
     * @param expected the id the file's name promises
     */
    public static Outcome read(RecordKind<?> kind, String file, RecordId expected, byte[] bytes) {
        Parsed.Outcome outcome = Parsed.parse(file, bytes);
        if (outcome.parsed().isEmpty()) {
            return new Outcome(Optional.empty(), outcome.problem().stream().toList());
        }
        Parsed parsed = outcome.parsed().get();
        JsonNode id = parsed.root().path("id");
        if (id.isTextual() && !id.textValue().equals(expected.text())) {
            Parsed.Place place = parsed.place("/id");
            return new Outcome(
                    Optional.empty(),
                    List.of(new Problem(
                            file,
                            place.line(),
                            place.column(),
                            expected.text(),
                            "id",
                            "says " + id.textValue() + ", but the file is called " + expected.text(),
                            "make both the same; an id that is in use elsewhere needs a number of its own")));
        }
        ValueReader reader = new ValueReader(file, expected.text(), parsed);
        Optional<? extends Entry> record = reader.object(kind.shape(), parsed.root(), "");
        return new Outcome(record.map(Entry.class::cast), List.copyOf(reader.problems()));
    }
}
