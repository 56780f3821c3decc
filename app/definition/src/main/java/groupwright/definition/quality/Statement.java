package groupwright.definition.quality;

import java.util.Objects;

/**
 * The wording of one requirement.
 *
 * @param text any text, also an empty one
 * @param measure whether a criterion outside the text carries the number
 */
public record Statement(String text, Measure measure) {
    public Statement {
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(measure, "measure");
    }
}
