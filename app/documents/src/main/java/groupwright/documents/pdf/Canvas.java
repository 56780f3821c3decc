package groupwright.documents.pdf;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfTextArray;
import com.lowagie.text.pdf.PdfWriter;
import java.awt.Color;

/** Draws on the current page; lengths in points, y grows downwards from the upper edge. */
final class Canvas {
    /** Thousandths of the size; more would read as a space when text is copied. */
    private static final double MOST_SHIFT = 80;

    private final PdfWriter writer;
    private final FontShelf shelf;
    private final Outline outline;

    Canvas(PdfWriter writer, FontShelf shelf) {
        this.writer = writer;
        this.shelf = shelf;
        this.outline = new Outline(writer.getDirectContent());
    }

    void text(Run run, double x, double baseline) {
        PdfContentByte ink = ink();
        ink.beginText();
        ink.setFontAndSize(shelf.font(run.style()), (float) run.style().size());
        ink.setColorFill(run.style().colour());
        ink.setTextMatrix((float) x, up(baseline - run.style().rise()));
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
        Face face = run.style().face();
        StringBuilder plain = new StringBuilder();
        double shifted = 0;
        for (int sign : run.text().codePoints().toArray()) {
            boolean digit = sign >= '0' && sign <= '9';
            double shift = digit ? Math.min(MOST_SHIFT, (shelf.width(face, '0') - shelf.width(face, sign)) / 2.0) : 0;
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

    void line(double x1, double y1, double x2, double y2, double thickness, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorStroke(colour);
        ink.setLineWidth((float) thickness);
        ink.moveTo((float) x1, up(y1));
        ink.lineTo((float) x2, up(y2));
        ink.stroke();
    }

    void dotted(double x1, double y, double x2, double thickness, Color colour) {
        ink().setLineDash((float) thickness, (float) (2 * thickness), 0f);
        line(x1, y, x2, y, thickness, colour);
        ink().setLineDash(0f);
    }

    void fillBox(double x, double top, double width, double height, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorFill(colour);
        ink.rectangle((float) x, up(top + height), (float) width, (float) height);
        ink.fill();
    }

    void strokeBox(double x, double top, double width, double height, double thickness, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorStroke(colour);
        ink.setLineWidth((float) thickness);
        ink.rectangle((float) x, up(top + height), (float) width, (float) height);
        ink.stroke();
    }

    void fillTriangle(double x1, double y1, double x2, double y2, double x3, double y3, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorFill(colour);
        ink.moveTo((float) x1, up(y1));
        ink.lineTo((float) x2, up(y2));
        ink.lineTo((float) x3, up(y3));
        ink.closePath();
        ink.fill();
    }

    /** The right half of a disc. */
    void fillHalfDisc(double x, double y, double radius, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorFill(colour);
        ink.arc((float) (x - radius), up(y + radius), (float) (x + radius), up(y - radius), -90, 180);
        ink.closePath();
        ink.fill();
    }

    void ring(double x, double y, double radius, double thickness, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorStroke(colour);
        ink.setLineWidth((float) thickness);
        ink.circle((float) x, up(y), (float) radius);
        ink.stroke();
    }

    /** Makes a rectangle lead to an anchor. */
    void link(String anchor, double left, double top, double right, double bottom) {
        ink().localGoto(anchor, (float) left, up(bottom), (float) right, up(top));
    }

    /** Names a place; each name is given once. */
    void anchor(String name, double left, double top) {
        PdfDestination place = new PdfDestination(PdfDestination.XYZ, (float) left, up(top), 0);
        if (!ink().localDestination(name, place)) {
            throw new IllegalStateException("the anchor " + name + " was given twice");
        }
    }

    /** Adds a heading to the outline, leading here. */
    void outline(int level, String title, double top) {
        outline.add(level, title, new PdfDestination(PdfDestination.FITH, up(top)));
    }

    private PdfContentByte ink() {
        return writer.getDirectContent();
    }

    private static float up(double y) {
        return (float) (PageGeometry.HEIGHT - y);
    }
}
