package groupwright.workbench.components;

import java.util.Objects;

/**
 * Something one can do.
 *
 * @param label verb and thing, for example {@code Plan a test for R-011}
 */
public record Step(String label, Runnable done) {
    public Step {
        Objects.requireNonNull(done, "done");
        if (label.isBlank()) {
            throw new IllegalArgumentException("a step needs a label");
        }
    }
}
