package groupwright.documents.tree;

import groupwright.documents.content.Inline;
import org.commonmark.node.CustomNode;

/** A criterion bar. */
public final class CriterionBar extends CustomNode {
    private final Inline.Bar bar;

    public CriterionBar(Inline.Bar bar) {
        this.bar = bar;
    }

    /** What it shows. */
    public Inline.Bar bar() {
        return bar;
    }
}
