package groupwright.documents.pages;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTextArray;

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
        if (run.style().digits() == Style.Digits.TABULAR) {
            ink.showText(tabular(run));
        } else {
            ink.showText(run.text());
        }
        ink.endText();
    }

    /** Digits near the middle of their room, which is that of a zero; the next sign stands where it would anyway. */
    private PdfTextArray tabular(Run run) {
        PdfTextArray array = new PdfTextArray();
        StringBuilder plain = new StringBuilder();
        double shifted = 0;
        for (int sign : run.text().codePoints().toArray()) {
            double shift = shelf.shift(sign, run.style());
            if (shift != shifted && plain.length() > 0) {
                array.add(plain.toString());
                plain.setLength(0);
            }
            if (shift != shifted) {
                array.add((float) (shifted - shift));
            }
            plain.appendCodePoint(sign);
            shifted = shift;
        }
        array.add(plain.toString());
        return array;
    }
}
