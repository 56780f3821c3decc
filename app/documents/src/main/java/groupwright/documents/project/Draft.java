package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.documents.tree.DocumentTree;
import java.util.List;

/** A filled template, or what stands in its way. */
sealed interface Draft {
    /**
     * The document.
     *
     * @param asks the question of each entry of its trace; entry {@code n} is at {@code n - 1}
     * @param warnings one sentence each
     */
    record Filled(DocumentTree tree, List<Ask> asks, List<String> warnings) implements Draft {
        public Filled {
            asks = List.copyOf(asks);
            warnings = List.copyOf(warnings);
        }
    }

    /** No document. */
    record Refused(List<Obstacle> obstacles) implements Draft {
        public Refused {
            obstacles = List.copyOf(obstacles);
        }
    }
}
