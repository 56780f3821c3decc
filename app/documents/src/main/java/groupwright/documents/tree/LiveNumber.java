package groupwright.documents.tree;

import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.Use;
import org.commonmark.node.CustomNode;

/** A computed number in running text or in a table cell. */
public final class LiveNumber extends CustomNode {
    private final ShownValue shown;
    private final Use use;

    public LiveNumber(ShownValue shown, Use use) {
        this.shown = shown;
        this.use = use;
    }

    /** What is printed. */
    public ShownValue shown() {
        return shown;
    }

    /** Which entry it has in the last chapter, and which of that entry's places this is. */
    public Use use() {
        return use;
    }
}
