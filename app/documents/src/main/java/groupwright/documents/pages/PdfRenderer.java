package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.DocumentTree;

/**
 * Draws a document as a PDF: text, tables and verdicts on the left, what each number is on the right, and links from
 * every number to its entry in the last chapter and back. Equal documents give equal bytes on one build of Java. It
 * needs no display. A renderer reads its fonts once and may be used again, but not by several threads at a time.
 */
public final class PdfRenderer {
    private final FontShelf shelf;
    private final PaperSize paper;

    /** Reads its own fonts and prints on A4. */
    public PdfRenderer() {
        this(new FontShelf());
    }

    /** Takes fonts that are read already and prints on A4. */
    public PdfRenderer(FontShelf shelf) {
        this(shelf, PaperSize.A4);
    }

    /** Takes fonts that are read already. */
    public PdfRenderer(FontShelf shelf, PaperSize paper) {
        this.shelf = shelf;
        this.paper = paper;
    }

    /** The whole file. Cost grows with the text; all pages are laid out before the first is drawn. */
    public RenderedPdf render(DocumentTree document) {
        LaidOut pages = LaidOut.of(document, shelf, paper);
        byte[] bytes = PdfFile.write(
                document.issue(),
                Labels.of(document.issue().locale()),
                shelf,
                pages.geometry(),
                pages.pageCount(),
                pages::draw);
        return new RenderedPdf(bytes, pages.warnings());
    }
}
