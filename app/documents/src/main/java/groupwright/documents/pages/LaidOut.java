package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.DocumentTree;
import groupwright.documents.tree.EntryBlock;
import groupwright.documents.tree.TitleBlock;
import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.Node;

/** A document with all its lines in their places, ready to be drawn on any canvas. Not for several threads. */
final class LaidOut {
    private static final int MOST_PASSES = 5;

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

    /**
     * Lays out a document. Cost grows with its text. Where the text says on which pages numbers stand, what comes from
     * there on is laid out again, as a rule twice in all, until no page moves, but not more than
     * {@value #MOST_PASSES} times.
     */
    static LaidOut of(DocumentTree document, FontShelf shelf, PaperSize paper) {
        Typesetter typesetter = new Typesetter(shelf, PageGeometry.of(paper));
        Labels labels = Labels.of(document.issue().locale());
        List<Page> pages = new ArrayList<>(body(document, labels, typesetter));
        UsePlaces places = UsePlaces.on(pages, document.trace());
        EntryLayout entries = new EntryLayout(labels, document.trace(), places, typesetter);
        pages.addAll(Paginator.paginate(lastChapter(document, entries, places, typesetter), typesetter.geometry()));
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

    /** The pages without their margins. */
    List<Page> pages() {
        return pages;
    }

    /** What stands beside a page. */
    List<Page.Placed> notes(Page page) {
        return notes.beside(page);
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

    private static List<Page> body(DocumentTree document, Labels labels, Typesetter typesetter) {
        List<Node> blocks = bodyBlocks(document);
        int known = 0;
        while (known < blocks.size() && !PlacesShown.in(blocks.get(known))) {
            known++;
        }
        List<Slab> settled = new ArrayList<>();
        UsePlaces places = UsePlaces.none(document.trace());
        for (Node block : blocks.subList(0, known)) {
            settled.addAll(
                    block instanceof TitleBlock title
                            ? new TitleLayout(labels, typesetter).layOut(title.issue())
                            : new BlockLayout(typesetter, places).layOut(block));
        }
        List<Page> pages = Paginator.paginate(settled, typesetter.geometry());
        for (int pass = 0; pass < MOST_PASSES && known < blocks.size(); pass++) {
            UsePlaces before = UsePlaces.on(pages, document.trace());
            List<Slab> all = new ArrayList<>(settled);
            for (Node block : blocks.subList(known, blocks.size())) {
                all.addAll(new BlockLayout(typesetter, before).layOut(block));
            }
            pages = Paginator.paginate(all, typesetter.geometry());
            if (UsePlaces.on(pages, document.trace()).sameAs(before)) {
                return pages;
            }
        }
        return pages;
    }

    private static List<Node> bodyBlocks(DocumentTree document) {
        List<Node> blocks = new ArrayList<>();
        Node node = document.root().getFirstChild();
        while (node != null && node != document.chapter()) {
            blocks.add(node);
            node = node.getNext();
        }
        return blocks;
    }

    private static List<Slab> lastChapter(
            DocumentTree document, EntryLayout entries, UsePlaces places, Typesetter typesetter) {
        List<Slab> slabs = new ArrayList<>();
        for (Node node = document.chapter(); node != null; node = node.getNext()) {
            slabs.addAll(
                    node instanceof EntryBlock entry
                            ? entries.layOut(entry.entry())
                            : new BlockLayout(typesetter, places).layOut(node));
        }
        return slabs;
    }
}
