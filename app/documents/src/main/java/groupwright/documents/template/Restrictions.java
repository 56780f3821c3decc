package groupwright.documents.template;

import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;

/** What Markdown allows and our documents do not. */
final class Restrictions {
    private static final Pattern PERMITTED_ADDRESS = Pattern.compile("(https?://|mailto:|#).*");
    private static final Pattern COMMENT = Pattern.compile("<!--.*?-->\\s*", Pattern.DOTALL);

    private Restrictions() {}

    /**
     * Checks a node. Comments and link definitions leave the tree, since no page shows them.
     *
     * @return what is wrong, if anything
     */
    static Optional<String> check(Node node) {
        if (node instanceof HtmlBlock html) {
            return checkHtml(node, html.getLiteral());
        } else if (node instanceof HtmlInline html) {
            return checkHtml(node, html.getLiteral());
        } else if (node instanceof Image) {
            return Optional.of("a template cannot show a picture by its address; take it out");
        } else if (node instanceof Link link
                && !PERMITTED_ADDRESS.matcher(link.getDestination()).matches()) {
            return Optional.of("\"" + link.getDestination() + "\" is no address a document may link to; use http://,"
                    + " https://, mailto: or a #heading");
        } else if (node instanceof LinkReferenceDefinition) {
            node.unlink();
        }
        return Optional.empty();
    }

    private static Optional<String> checkHtml(Node node, String literal) {
        if (COMMENT.matcher(literal).matches()) {
            node.unlink();
            return Optional.empty();
        }
        return Optional.of("raw HTML is not taken over; write Markdown, or put it between backticks to show it");
    }
}
