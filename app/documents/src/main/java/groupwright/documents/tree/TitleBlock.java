package groupwright.documents.tree;

import org.commonmark.node.CustomBlock;

/** Stands first in a document: what it is, of which project, from when. */
public final class TitleBlock extends CustomBlock {
    private final Issue issue;

    public TitleBlock(Issue issue) {
        this.issue = issue;
    }

    /** What the document says about itself. */
    public Issue issue() {
        return issue;
    }
}
