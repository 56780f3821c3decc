package groupwright.documents.markdown;

import groupwright.documents.markdown.MarkdownText.Position;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.Caption;
import groupwright.documents.tree.ChartBlock;
import groupwright.documents.tree.CriterionBar;
import groupwright.documents.tree.EntryBlock;
import groupwright.documents.tree.LiveNumber;
import groupwright.documents.tree.ShownPlaces;
import groupwright.documents.tree.TitleBlock;
import groupwright.documents.tree.TraceMark;
import groupwright.documents.tree.VerdictMark;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.Heading;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.markdown.MarkdownNodeRendererContext;
import org.commonmark.renderer.markdown.MarkdownWriter;

/** Writes text and the nodes that are ours. */
final class OwnNodes implements NodeRenderer {
    private final MarkdownNodeRendererContext context;
    private final MarkdownWriter writer;
    private final EntryWriter entries;

    OwnNodes(MarkdownNodeRendererContext context, EntryWriter entries) {
        this.context = context;
        this.writer = context.getWriter();
        this.entries = entries;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(
                Text.class,
                LiveNumber.class,
                VerdictMark.class,
                CriterionBar.class,
                ShownPlaces.class,
                TraceMark.class,
                Caption.class,
                ChartBlock.class,
                TitleBlock.class,
                EntryBlock.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof Text text) {
            write(text);
        } else if (node instanceof LiveNumber number) {
            write(number);
        } else if (node instanceof VerdictMark mark) {
            writer.raw(MarkdownText.escape(mark.word(), position(mark)));
        } else if (node instanceof TraceMark mark) {
            anchor(mark.use());
            link(mark.use());
        } else if (node instanceof ShownPlaces places) {
            writer.raw(entries.places(places.entries()));
        } else if (node instanceof Caption caption) {
            write(caption);
        } else if (node instanceof ChartBlock) {
            renderChildren(node);
        } else if (node instanceof TitleBlock title) {
            entries.title(title.issue(), writer);
        } else if (node instanceof EntryBlock entry) {
            entries.entry(entry.entry(), writer);
        } // a bar has its number and verdict beside it and leaves no text
    }

    private void write(Text text) {
        String escaped = MarkdownText.escape(text.getLiteral(), position(text));
        if (text.getParent() instanceof Heading) {
            escaped = escaped.replaceAll("(?<!\\\\)#", "\\\\#"); // a heading may end in # signs that are not shown
        }
        if (escaped.endsWith("!") && text.getNext() instanceof Link) {
            escaped = escaped.substring(0, escaped.length() - 1) + "\\!";
        }
        if (!escaped.isEmpty()) {
            writer.raw(escaped);
        }
    }

    private void write(LiveNumber number) {
        anchor(number.use());
        writer.raw(MarkdownText.escape(number.shown().text(), position(number))); // no line start after the anchor
        link(number.use());
    }

    private void anchor(Use use) {
        writer.raw("<a id=\"" + use.anchor() + "\"></a>");
    }

    private void link(Use use) {
        writer.raw(" [[" + use.entry() + "]](#" + use.entryAnchor() + ")");
    }

    private void write(Caption caption) {
        writer.raw("**" + MarkdownText.escape(caption.number(), Position.INSIDE) + "** ");
        renderChildren(caption);
        writer.block();
    }

    private void renderChildren(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            context.render(child);
        }
    }

    private Position position(Node node) {
        for (Node around = node.getParent(); around != null; around = around.getParent()) {
            if (around instanceof TableCell) {
                return Position.IN_CELL;
            }
        }
        return writer.isAtLineStart() ? Position.LINE_START : Position.INSIDE;
    }
}
