package groupwright.documents.tree;

import org.commonmark.node.CustomBlock;

/** The line above a table or chart; its children are the caption's text. */
public final class Caption extends CustomBlock {
    private final String number;

    public Caption(String number) {
        this.number = number;
    }

    /** For example {@code Table 3} or {@code Figure 1}. */
    public String number() {
        return number;
    }
}
