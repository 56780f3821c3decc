package groupwright.documents.markdown;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.DocumentTree;
import java.util.Set;
import java.util.function.Function;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.markdown.MarkdownNodeRendererContext;
import org.commonmark.renderer.markdown.MarkdownNodeRendererFactory;

/**
 * Writes a document as Markdown that any viewer shows: tables as in GFM, each number with a link to its entry in the
 * last chapter and a link back. Equal documents give equal text on every machine; lines end in {@code \n}.
 */
public final class MarkdownRenderer {
    /** The whole text, ending with a line end. */
    public String render(DocumentTree document) {
        EntryWriter entries = new EntryWriter(Labels.of(document.issue().locale()), document.trace());
        return org.commonmark.renderer.markdown.MarkdownRenderer.builder()
                .nodeRendererFactory(factory(context -> new OwnNodes(context, entries)))
                .nodeRendererFactory(factory(TableNodes::new))
                .build()
                .render(document.root());
    }

    private static MarkdownNodeRendererFactory factory(Function<MarkdownNodeRendererContext, NodeRenderer> renderer) {
        return new MarkdownNodeRendererFactory() {
            @Override
            public NodeRenderer create(MarkdownNodeRendererContext context) {
                return renderer.apply(context);
            }

            @Override
            public Set<Character> getSpecialCharacters() {
                return Set.of();
            }
        };
    }
}
