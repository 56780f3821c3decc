package groupwright.documents.numbers;

import groupwright.documents.labels.Labels;
import java.util.Map;

/** Units that are words or short for words, in the reader's language; symbols are the same in all. */
final class UnitWords {
    private static final Map<String, String> KEYS = Map.of(
            "teeth", "unit.teeth",
            "links", "unit.links",
            "weeks", "unit.weeks",
            "rpm", "unit.rpm",
            "1/turn", "unit.perTurn",
            "minor units", "unit.minor");

    private UnitWords() {}

    static String of(String unit, Labels labels) {
        String key = KEYS.get(unit);
        return key == null ? unit : labels.text(key);
    }
}
