package groupwright.documents.html;

import groupwright.documents.html.Anchors.Section;
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
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;

/** Writes text, headings, links and the nodes that are ours, except tables and charts. */
final class OwnNodes implements NodeRenderer {
    private static final Pattern PERMITTED_ADDRESS = Pattern.compile("(https?://|mailto:|#).*", Pattern.DOTALL);

    private final HtmlNodeRendererContext context;
    private final Html html;
    private final Anchors anchors;
    private final TitleWriter title;
    private final EntryWriter entries;

    OwnNodes(HtmlNodeRendererContext context, Anchors anchors, TitleWriter title, EntryWriter entries) {
        this.context = context;
        this.html = new Html(context.getWriter());
        this.anchors = anchors;
        this.title = title;
        this.entries = entries;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(
                Text.class,
                Heading.class,
                Link.class,
                Image.class,
                LiveNumber.class,
                VerdictMark.class,
                TraceMark.class,
                CriterionBar.class,
                ShownPlaces.class,
                Caption.class,
                TitleBlock.class,
                EntryBlock.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof Text text) {
            html.text(text.getLiteral());
        } else if (node instanceof Heading heading) {
            write(heading);
        } else if (node instanceof Link link) {
            write(link);
        } else if (node instanceof Image) {
            renderChildren(node); // its words; no picture is fetched
        } else if (node instanceof LiveNumber number) {
            entries.number(number, html);
        } else if (node instanceof TraceMark mark) {
            entries.mark(mark.use(), html);
        } else if (node instanceof VerdictMark mark) {
            Marks.verdict(mark, html);
        } else if (node instanceof CriterionBar bar) {
            Marks.bar(bar.bar(), html);
        } else if (node instanceof ShownPlaces places) {
            entries.places(places.entries(), html);
        } else if (node instanceof Caption caption) {
            write(caption);
        } else if (node instanceof TitleBlock block) {
            title.write(block.issue(), html);
        } else if (node instanceof EntryBlock block) {
            entries.entry(block.entry(), html);
        }
    }

    private void write(Heading heading) {
        Section section = anchors.section(heading);
        String element = "h" + section.level();
        html.line().open(element, "id", section.name());
        renderChildren(heading);
        html.close(element).line();
    }

    private void write(Link link) {
        String address = link.getDestination();
        if (!PERMITTED_ADDRESS.matcher(address).matches()) {
            renderChildren(link);
            return;
        }
        if (address.startsWith("#")) {
            html.open("a", "href", address);
        } else {
            html.open("a", "href", address, "rel", "noreferrer noopener");
        }
        renderChildren(link);
        html.close("a");
    }

    /** A caption of a table or chart is written with it. */
    private void write(Caption caption) {
        if (caption.getNext() instanceof TableBlock || caption.getNext() instanceof ChartBlock) {
            return;
        }
        html.line().open("p", "class", "caption").element("b", caption.number()).text(" ");
        renderChildren(caption);
        html.close("p").line();
    }

    private void renderChildren(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            context.render(child);
        }
    }
}
