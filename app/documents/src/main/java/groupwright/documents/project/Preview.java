package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.trace.Use;
import java.util.List;

/** A document to look at before it is written, or what stands in its way. */
public sealed interface Preview {
    /**
     * The document as it will print. It no longer needs the ledger and may go to another thread.
     *
     * @param document its pages
     * @param asks the question of each entry of its trace; entry {@code n} is at {@code n - 1}
     */
    record Ready(PaintedDocument document, List<Ask> asks) implements Preview {
        public Ready {
            asks = List.copyOf(asks);
        }

        /** The question that the number at a place answers. */
        public Ask ask(Use use) {
            return asks.get(use.entry() - 1);
        }
    }

    /**
     * There is no document.
     *
     * @param obstacles at least one
     */
    record Refused(List<Obstacle> obstacles) implements Preview {
        public Refused {
            obstacles = List.copyOf(obstacles);
        }
    }
}
