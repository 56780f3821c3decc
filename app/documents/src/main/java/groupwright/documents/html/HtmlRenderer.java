package groupwright.documents.html;

import groupwright.documents.labels.Labels;
import groupwright.documents.pages.FontShelf;
import groupwright.documents.tree.DocumentTree;
import java.util.function.Function;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;

/**
 * Writes a document as one HTML file that fetches nothing: style, script and drawings are inside, and its own policy
 * (Content Security Policy Level 3, W3C) lets nothing else run or load. Each number is a link to its entry in the last
 * chapter, each entry links back to all its places; long tables can be filtered and sorted. Without script the file is
 * complete. Equal documents give equal text on every machine; lines end in {@code \n}. A renderer may be used again, but
 * not by several threads at a time.
 */
public final class HtmlRenderer {
    private final FontShelf shelf;

    /** Reads its own fonts, with which text of charts is measured. */
    public HtmlRenderer() {
        this(new FontShelf());
    }

    /** Takes fonts that are read already. */
    public HtmlRenderer(FontShelf shelf) {
        this.shelf = shelf;
    }

    /** The whole file. Cost grows with the text. */
    public String render(DocumentTree document) {
        Labels labels = Labels.of(document.issue().locale());
        Anchors anchors = Anchors.of(document.root());
        TitleWriter title = new TitleWriter(labels);
        EntryWriter entries = new EntryWriter(labels, document.trace(), anchors);
        ChartWriter charts = new ChartWriter(shelf.chartWidths());
        String body = renderer(context -> new OwnNodes(context, anchors, title, entries), context -> {
                    return new TableNodes(context, anchors, labels, charts);
                })
                .render(document.root());
        return new Frame(document.issue(), labels).around(new ContentsWriter(labels, anchors).text(), body);
    }

    @SafeVarargs
    private static org.commonmark.renderer.html.HtmlRenderer renderer(
            Function<HtmlNodeRendererContext, NodeRenderer>... own) {
        org.commonmark.renderer.html.HtmlRenderer.Builder builder = org.commonmark.renderer.html.HtmlRenderer.builder()
                .escapeHtml(true)
                .sanitizeUrls(true);
        for (Function<HtmlNodeRendererContext, NodeRenderer> renderer : own) {
            builder.nodeRendererFactory(renderer::apply);
        }
        return builder.build();
    }
}
