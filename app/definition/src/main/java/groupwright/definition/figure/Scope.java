package groupwright.definition.figure;

import groupwright.definition.record.RecordId;
import java.util.Optional;

/** What kinds of record a figure can be asked about; in the order in which a subject is written. */
public enum Scope {
    CONCEPT("C"),
    RIDERS("G"),
    BIKE("B"),
    REQUIREMENT("R"),
    CLAIM("K"),
    NEED("N"),
    PART("P");

    private static final Scope[] ALL = values();

    private final String letters;

    Scope(String letters) {
        this.letters = letters;
    }

    /** The letters ids of this kind begin with. */
    public String letters() {
        return letters;
    }

    /** The scope of an id. */
    static Optional<Scope> of(RecordId id) {
        for (Scope scope : ALL) {
            if (id.hasLetters(scope.letters)) {
                return Optional.of(scope);
            }
        }
        return Optional.empty();
    }

    /** The scope whose ids begin with these letters. */
    public static Optional<Scope> of(String letters) {
        for (Scope scope : values()) {
            if (scope.letters.equals(letters)) {
                return Optional.of(scope);
            }
        }
        return Optional.empty();
    }
}
