package groupwright.documents.template;

import java.util.Optional;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Block;
import org.commonmark.node.Node;

/**
 * Size of a parsed tree, found without recursion so that no tree is too deep to measure.
 *
 * @param blocks blocks and table rows
 * @param tooDeep the first node below the permitted depth
 */
record Shape(int blocks, Optional<Node> tooDeep) {
    static Shape of(Node root, int permittedDepth) {
        int blocks = 0;
        int depth = 0;
        Node node = root;
        while (node != null) {
            if (depth > permittedDepth) {
                return new Shape(blocks, Optional.of(node));
            }
            blocks += node instanceof Block || node instanceof TableRow ? 1 : 0;
            if (node.getFirstChild() != null) {
                node = node.getFirstChild();
                depth++;
                continue;
            }
            while (node != null && node != root && node.getNext() == null) {
                node = node.getParent();
                depth--;
            }
            node = node == null || node == root ? null : node.getNext();
        }
        return new Shape(blocks, Optional.empty());
    }
}
