package groupwright.documents.pdf;

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

/**
 * Draws a document as an A4 PDF: text, tables and verdicts on the left, what each number is on the right, and links from
 * every number to its entry in the last chapter and back. Equal documents give equal bytes on one build of Java. It
 * needs no display. A renderer reads its fonts once and may be used again, but not by several threads at a time.
 */
public final class PdfRenderer {
    private final FontShelf shelf = new FontShelf();

    /** The whole file. Cost grows with the text; all pages are laid out before the first is drawn. */
    public RenderedPdf render(DocumentTree document) {
        Typesetter typesetter = new Typesetter(shelf);
        Labels labels = Labels.of(document.issue().locale());
        List<Page> pages = new ArrayList<>(Paginator.paginate(body(document, labels, typesetter)));
        EntryLayout entries = new EntryLayout(labels, document.trace(), pagesOfUses(pages), typesetter);
        pages.addAll(Paginator.paginate(lastChapter(document, entries, typesetter)));
        MarginNotes notes = new MarginNotes(document.trace(), labels, typesetter);
        PagePainter painter = new PagePainter(document.issue(), labels, typesetter);
        byte[] bytes = PdfFile.write(document.issue(), shelf, pages.size(), (canvas, index) -> {
            Page page = pages.get(index);
            painter.paint(canvas, page, notes.beside(page), index + 1, pages.size());
        });
        return new RenderedPdf(bytes, typesetter.warnings(labels));
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
