package groupwright.documents.tree;

import java.util.Objects;
import org.commonmark.node.CustomBlock;

/** The line above a table or chart; its children are the caption's text. */
public final class Caption extends CustomBlock {
    private final Kind kind;
    private String number = "";

    /** What stands below the caption; each kind is counted by itself. */
    public enum Kind {
        TABLE,
        FIGURE
    }

    public Caption(Kind kind) {
        this.kind = Objects.requireNonNull(kind, "kind");
    }

    public Kind kind() {
        return kind;
    }

    /** For example {@code Table 4-1} or {@code Figure 1}; empty until the whole document is there to be counted. */
    public String number() {
        return number;
    }

    public void setNumber(String number) {
        this.number = Objects.requireNonNull(number, "number");
    }
}
