package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Series;
import java.util.Locale;
import java.util.Optional;

/** The four steps a requirement climbs. */
public enum Rung {
    STATED,
    MEASURABLE,
    CALCULATED,
    TESTED;

    /** As it stands in a ladder's series. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The highest rung a ladder has reached; nothing for an empty ladder. */
    public static Optional<Rung> highest(Answer ladder) {
        Optional<Rung> highest = Optional.empty();
        if (ladder instanceof Series series) {
            for (Series.At at : series.values()) {
                if (at.value() > 0) {
                    highest = Optional.of(valueOf(at.at().toUpperCase(Locale.ROOT)));
                }
            }
        }
        return highest;
    }
}
