package groupwright.workbench.components;

import java.util.Objects;
import java.util.Optional;

/**
 * One way to narrow a list.
 *
 * @param count how many the list would then hold
 * @param mark of the verdict it asks for
 */
public record Facet(String word, int count, Optional<Mark> mark) {
    public Facet {
        Objects.requireNonNull(word, "word");
        Objects.requireNonNull(mark, "mark");
    }
}
