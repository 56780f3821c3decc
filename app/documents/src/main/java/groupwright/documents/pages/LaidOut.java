package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.DocumentTree;
import groupwright.documents.tree.EntryBlock;
import groupwright.documents.tree.TitleBlock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.commonmark.node.Node;

/** A document with all its lines in their places, ready to be drawn on any canvas. Not for several threads. */
final class LaidOut {
    private final Typesetter typesetter;
    private final Labels labels;
    private final List<Page> pages;
    private final MarginNotes notes;
    private final PagePainter painter;

    private LaidOut(Typesetter typesetter, Labels labels, List<Page> pages, MarginNotes notes, PagePainter painter) {
        this.typesetter = typesetter;
        this.labels = labels;
        this.pages = List.copyOf(pages);
        this.notes = notes;
        this.painter = painter;
    }

    /** Lays out a document. Cost grows with its text. */
    static LaidOut of(DocumentTree document, FontShelf shelf, PaperSize paper) {
        Typesetter typesetter = new Typesetter(shelf, PageGeometry.of(paper));
        Labels labels = Labels.of(document.issue().locale());
        List<Page> pages =
                new ArrayList<>(Paginator.paginate(body(document, labels, typesetter), typesetter.geometry()));
        EntryLayout entries = new EntryLayout(labels, document.trace(), pagesOfUses(pages), typesetter);
        pages.addAll(Paginator.paginate(lastChapter(document, entries, typesetter), typesetter.geometry()));
        return new LaidOut(
                typesetter,
                labels,
                pages,
                new MarginNotes(document.trace(), labels, typesetter),
                new PagePainter(document.issue(), labels, typesetter));
    }

    PageGeometry geometry() {
        return typesetter.geometry();
    }

    int pageCount() {
        return pages.size();
    }

    /**
     * Draws a page.
     *
     * @param index from 0
     */
    void draw(Canvas canvas, int index) {
        Page page = pages.get(index);
        painter.paint(canvas, page, notes.beside(page), index + 1, pages.size());
    }

    /** What could not be shown as written; complete once every page is drawn. */
    List<String> warnings() {
        return typesetter.warnings(labels);
    }

    private static List<Slab> body(DocumentTree document, Labels labels, Typesetter typesetter) {
        List<Slab> slabs = new ArrayList<>();
        Node node = document.root().getFirstChild();
        while (node != null && node != document.chapter()) {
            slabs.addAll(
                    node instanceof TitleBlock title
                            ? new TitleLayout(labels, typesetter).layOut(title.issue())
                            : new BlockLayout(typesetter).layOut(node));
            node = node.getNext();
        }
        return slabs;
    }

    private static List<Slab> lastChapter(DocumentTree document, EntryLayout entries, Typesetter typesetter) {
        List<Slab> slabs = new ArrayList<>();
        for (Node node = document.chapter(); node != null; node = node.getNext()) {
            slabs.addAll(
                    node instanceof EntryBlock entry
                            ? entries.layOut(entry.entry())
                            : new BlockLayout(typesetter).layOut(node));
        }
        return slabs;
    }

    private static Map<Use, Integer> pagesOfUses(List<Page> pages) {
        Map<Use, Integer> pageOf = new HashMap<>(); // looked up only
        for (int i = 0; i < pages.size(); i++) {
            for (Page.Placed placed : pages.get(i).slabs()) {
                for (Slab.Sighting sighting : placed.slab().sightings()) {
                    pageOf.putIfAbsent(sighting.use(), i + 1);
                }
            }
        }
        return pageOf;
    }
}
