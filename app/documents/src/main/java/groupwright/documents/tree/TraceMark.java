package groupwright.documents.tree;

import groupwright.documents.trace.Use;
import java.util.Objects;
import org.commonmark.node.CustomNode;

/** Leads to the entry of numbers that a drawing shows; stands in its caption. */
public final class TraceMark extends CustomNode {
    private final Use use;

    public TraceMark(Use use) {
        this.use = Objects.requireNonNull(use, "use");
    }

    /** Which entry it leads to, and which of that entry's places this is. */
    public Use use() {
        return use;
    }
}
