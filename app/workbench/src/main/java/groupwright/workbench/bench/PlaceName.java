package groupwright.workbench.bench;

import groupwright.definition.record.RecordId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The places of the window, in the order of the rail. A place is shown when it works. */
public enum PlaceName {
    RIDERS(Stage.LISTEN, "G", "N"),
    REQUIREMENTS(Stage.LISTEN, "R"),
    BIKES(Stage.SHAPE, "B"),
    CONCEPTS(Stage.SHAPE, "C"),
    CASSETTES(Stage.SHAPE),
    WEIGHT(Stage.SHAPE, "P", "L", "Y"),
    CLAIMS(Stage.PROVE, "K"),
    DECISIONS(Stage.SETTLE, "D", "M"),
    DOCUMENTS(Stage.SETTLE);

    private final Stage stage;
    private final List<String> letters;

    PlaceName(Stage stage, String... letters) {
        this.stage = stage;
        this.letters = List.of(letters);
    }

    /** The stage it stands under. */
    public Stage stage() {
        return stage;
    }

    /** The place that shows records of this kind; nothing for the project's own settings. */
    public static Optional<PlaceName> of(RecordId id) {
        return Arrays.stream(values())
                .filter(place -> place.letters.stream().anyMatch(id::hasLetters))
                .findFirst();
    }
}
