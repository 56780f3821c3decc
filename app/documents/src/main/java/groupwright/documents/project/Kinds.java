package groupwright.documents.project;

import groupwright.definition.figure.Nearest;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import java.util.List;
import java.util.Map;

/** The words templates use for kinds of record; inside a loop the same word stands for one record. */
final class Kinds {
    private static final Map<String, RecordKind<?>> ALL = Map.ofEntries(
            Map.entry("rider", RecordKinds.RIDER_GROUP),
            Map.entry("need", RecordKinds.NEED),
            Map.entry("requirement", RecordKinds.REQUIREMENT),
            Map.entry("concept", RecordKinds.CONCEPT),
            Map.entry("bike", RecordKinds.BIKE),
            Map.entry("part", RecordKinds.PART),
            Map.entry("line", RecordKinds.LINE_SOLD),
            Map.entry("claim", RecordKinds.CLAIM),
            Map.entry("decision", RecordKinds.DECISION),
            Map.entry("yardstick", RecordKinds.YARDSTICK),
            Map.entry("milestone", RecordKinds.MILESTONE));

    private Kinds() {}

    /** All words, in alphabetical order. */
    static List<String> words() {
        return ALL.keySet().stream().sorted().toList();
    }

    /** Whether a word names a kind. */
    static boolean contains(String word) {
        return ALL.containsKey(word);
    }

    /**
     * The kind a word names.
     *
     * @throws Invalid with the nearest word if it names none
     */
    static RecordKind<?> of(String word) {
        RecordKind<?> kind = ALL.get(word);
        if (kind != null) {
            return kind;
        }
        throw new Invalid(
                "",
                "\"" + word + "\" is no kind of record",
                Nearest.of(word, words())
                        .map(near -> "did you mean " + near + "?")
                        .orElse("the kinds are " + String.join(", ", words())));
    }
}
