package groupwright.documents.tree;

import groupwright.documents.trace.NumberedEntry;
import org.commonmark.node.CustomBlock;

/** One entry of the last chapter. */
public final class EntryBlock extends CustomBlock {
    private final NumberedEntry entry;

    public EntryBlock(NumberedEntry entry) {
        this.entry = entry;
    }

    /** The entry. */
    public NumberedEntry entry() {
        return entry;
    }
}
