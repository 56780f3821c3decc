package groupwright.workbench.claims;

import groupwright.workbench.components.Chip;
import java.util.Optional;

/** A value as it was approved, and as it is now. */
record Moved(Optional<String> then, Sign sign, Chip now) {
    /** What stands between them. */
    enum Sign {
        NONE(""),
        SAME("="),
        MOVED("→");

        private final String text;

        Sign(String text) {
            this.text = text;
        }

        String text() {
            return text;
        }
    }
}
