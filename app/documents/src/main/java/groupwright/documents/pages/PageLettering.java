package groupwright.documents.pages;

import com.lowagie.text.pdf.PdfContentByte;

/** Writes runs of glyphs where the library counts from the lower left. */
final class PageLettering {
    private final FontShelf shelf;

    PageLettering(FontShelf shelf) {
        this.shelf = shelf;
    }

    /**
     * Writes a run.
     *
     * @param height of the baseline, its style's rise not counted
     */
    void write(PdfContentByte ink, Run run, double x, double height) {
        ink.beginText();
        ink.setFontAndSize(shelf.font(run.style()), (float) run.style().size());
        ink.setColorFill(run.style().colour());
        ink.setTextMatrix((float) x, (float) (height + run.style().rise()));
        ink.showText(run.text());
        ink.endText();
    }
}
