package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** All kinds of record, in the order in which people meet them. */
public final class RecordKinds {
    public static final RecordKind<Project> PROJECT = new RecordKind<>("", "", "project", Project.class);
    public static final RecordKind<RiderGroup> RIDER_GROUP =
            new RecordKind<>("G", "riders", "rider group", RiderGroup.class);
    public static final RecordKind<Need> NEED = new RecordKind<>("N", "needs", "need", Need.class);
    public static final RecordKind<Requirement> REQUIREMENT =
            new RecordKind<>("R", "requirements", "requirement", Requirement.class);
    public static final RecordKind<Bike> BIKE = new RecordKind<>("B", "bikes", "bike", Bike.class);
    public static final RecordKind<Concept> CONCEPT = new RecordKind<>("C", "concepts", "concept", Concept.class);
    public static final RecordKind<Part> PART = new RecordKind<>("P", "parts", "part", Part.class);
    public static final RecordKind<Yardstick> YARDSTICK =
            new RecordKind<>("Y", "yardsticks", "yardstick", Yardstick.class);
    public static final RecordKind<LineSold> LINE_SOLD = new RecordKind<>("L", "lines", "line sold", LineSold.class);
    public static final RecordKind<Claim> CLAIM = new RecordKind<>("K", "claims", "claim", Claim.class);
    public static final RecordKind<Decision> DECISION = new RecordKind<>("D", "decisions", "decision", Decision.class);
    public static final RecordKind<Milestone> MILESTONE =
            new RecordKind<>("M", "milestones", "milestone", Milestone.class);

    private static final List<RecordKind<?>> ALL = List.of(
            PROJECT,
            RIDER_GROUP,
            NEED,
            REQUIREMENT,
            BIKE,
            CONCEPT,
            PART,
            YARDSTICK,
            LINE_SOLD,
            CLAIM,
            DECISION,
            MILESTONE);

    private RecordKinds() {}

    /** All kinds. */
    public static List<RecordKind<?>> all() {
        return ALL;
    }

    /** The kind whose ids begin with these letters; empty letters are the project. */
    public static Optional<RecordKind<?>> byLetters(String letters) {
        return find(kind -> kind.letters().equals(letters));
    }

    /** The kind an id belongs to. */
    public static Optional<RecordKind<?>> of(RecordId id) {
        int index = indexOf(id);
        return index < 0 ? Optional.empty() : Optional.of(ALL.get(index));
    }

    /** Position of an id's kind among {@link #all()}; -1 where no kind has such ids. */
    static int indexOf(RecordId id) {
        for (int i = 0; i < ALL.size(); i++) {
            if (id.hasLetters(ALL.get(i).letters())) {
                return i;
            }
        }
        return -1;
    }

    /** The kind whose files lie in this folder. */
    public static Optional<RecordKind<?>> byFolder(String folder) {
        return find(kind -> kind.folder().equals(folder));
    }

    /** The kind of a Java record. */
    @SuppressWarnings("unchecked") // found by its own class
    public static <R extends Entry> RecordKind<R> of(Class<R> type) {
        return (RecordKind<R>) find(kind -> kind.type() == type)
                .orElseThrow(() -> new IllegalArgumentException(type + " is no kind of record"));
    }

    private static Optional<RecordKind<?>> find(java.util.function.Predicate<RecordKind<?>> wanted) {
        for (RecordKind<?> kind : ALL) {
            if (wanted.test(kind)) {
                return Optional.of(kind);
            }
        }
        return Optional.empty();
    }
}
