package groupwright.documents.pages;

import groupwright.documents.tree.DocumentTree;

/**
 * Draws a document as an A4 PDF: text, tables and verdicts on the left, what each number is on the right, and links from
 * every number to its entry in the last chapter and back. Equal documents give equal bytes on one build of Java. It
 * needs no display. A renderer reads its fonts once and may be used again, but not by several threads at a time.
 */
public final class PdfRenderer {
    private final FontShelf shelf;

    /** Reads its own fonts. */
    public PdfRenderer() {
        this(new FontShelf());
    }

    /** Takes fonts that are read already. */
    public PdfRenderer(FontShelf shelf) {
        this.shelf = shelf;
    }

    /** The whole file. Cost grows with the text; all pages are laid out before the first is drawn. */
    public RenderedPdf render(DocumentTree document) {
        LaidOut pages = LaidOut.of(document, shelf);
        byte[] bytes = PdfFile.write(document.issue(), shelf, pages.pageCount(), pages::draw);
        return new RenderedPdf(bytes, pages.warnings());
    }
}
