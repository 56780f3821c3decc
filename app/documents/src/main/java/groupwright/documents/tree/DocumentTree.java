package groupwright.documents.tree;

import groupwright.documents.trace.Trace;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;

/**
 * A finished document, ready for any renderer. Renderers do not change it.
 *
 * @param issue what it says about itself
 * @param root title block, the template's content, and the chapter on where the numbers come from, which starts with
 *     {@code chapter}
 * @param chapter the heading of that last chapter, a child of {@code root}
 * @param trace all its numbers
 */
public record DocumentTree(Issue issue, Document root, Heading chapter, Trace trace) {}
