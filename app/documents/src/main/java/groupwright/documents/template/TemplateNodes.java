package groupwright.documents.template;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/** Finding and moving nodes of a tree whose depth has been checked. */
final class TemplateNodes {
    private TemplateNodes() {}

    /** Everything that needs work after parsing, in document order. */
    static List<Node> of(Node root) {
        List<Node> found = new ArrayList<>();
        root.accept(new AbstractVisitor() {
            @Override
            public void visit(CustomNode node) {
                if (node instanceof Placeholder) {
                    found.add(node);
                }
                visitChildren(node);
            }

            @Override
            public void visit(FencedCodeBlock node) {
                found.add(node);
            }

            @Override
            public void visit(HtmlBlock node) {
                found.add(node);
            }

            @Override
            public void visit(HtmlInline node) {
                found.add(node);
            }

            @Override
            public void visit(Image node) {
                found.add(node);
            }

            @Override
            public void visit(Link node) {
                found.add(node);
                visitChildren(node);
            }

            @Override
            public void visit(LinkReferenceDefinition node) {
                found.add(node);
            }
        });
        return found;
    }

    /** All headings. */
    static List<Heading> headings(Node root) {
        List<Heading> found = new ArrayList<>();
        root.accept(new AbstractVisitor() {
            @Override
            public void visit(Heading heading) {
                found.add(heading);
            }
        });
        return found;
    }

    /** Makes neighbouring texts one, so that a renderer sees what stands at the start of a line. */
    static void joinTexts(Node root) {
        root.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                if (text.getPrevious() instanceof Text) {
                    text.unlink(); // joined already; the walk holds the node after it
                } else if (text.getNext() instanceof Text) {
                    StringBuilder joined = new StringBuilder();
                    for (Node next = text; next instanceof Text part; next = next.getNext()) {
                        joined.append(part.getLiteral());
                    }
                    text.setLiteral(joined.toString());
                }
            }
        });
    }

    static void moveChildren(Node from, Node to) {
        while (from.getFirstChild() != null) {
            to.appendChild(from.getFirstChild());
        }
    }

    static void moveChildrenBefore(Node from, Node place) {
        while (from.getFirstChild() != null) {
            place.insertBefore(from.getFirstChild());
        }
    }
}
