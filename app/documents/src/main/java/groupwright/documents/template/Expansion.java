package groupwright.documents.template;

import groupwright.documents.tree.DocumentTree;
import java.util.List;

/** A whole document, or everything that stands in its way; never half a document. */
public sealed interface Expansion {
    /**
     * The document is complete.
     *
     * @param warnings one sentence each, without a full stop
     */
    record Complete(DocumentTree document, List<String> warnings) implements Expansion {
        public Complete {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * There is no document.
     *
     * @param problems at least one, in the order of the template
     */
    record Refused(List<Problem> problems) implements Expansion {
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("a refusal needs a problem");
            }
        }
    }
}
