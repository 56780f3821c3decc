package groupwright.documents.pages;

import groupwright.documents.tree.ShownPlaces;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;

/** Finds out whether a block says on which pages numbers stand. */
final class PlacesShown extends AbstractVisitor {
    private boolean found;

    private PlacesShown() {}

    static boolean in(Node block) {
        PlacesShown search = new PlacesShown();
        block.accept(search);
        return search.found;
    }

    @Override
    public void visit(CustomNode node) {
        found |= node instanceof ShownPlaces;
        visitChildren(node);
    }
}
