package groupwright.documents.pages;

import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfGraphics2D;
import com.lowagie.text.pdf.PdfWriter;
import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartSize;
import groupwright.documents.charts.Palette;
import groupwright.documents.charts.Pen;
import java.awt.Color;

/** Writes the marks of a page into a PDF file. */
final class PdfCanvas implements Canvas {
    private final PdfWriter writer;
    private final PageLettering lettering;
    private final Outline outline;
    private final double height;

    PdfCanvas(PdfWriter writer, FontShelf shelf, double height) {
        this.writer = writer;
        this.height = height;
        this.lettering = new PageLettering(shelf);
        this.outline = new Outline(writer.getDirectContent());
    }

    /** A page on paper needs no more of a number than its glyphs. */
    @Override
    public void number(Piece.Number number, double x, double baseline) {}

    @Override
    public void text(Run run, double x, double baseline) {
        lettering.write(ink(), run, x, up(baseline));
    }

    @Override
    public void chart(Chart chart, ChartSize size, Typesetter typesetter, double x, double top, double scale) {
        PdfContentByte ink = ink();
        ink.saveState();
        ink.concatCTM((float) scale, 0, 0, (float) scale, (float) x, up(top + size.height() * scale));
        PdfGraphics2D shapes = new PdfGraphics2D(
                ink, (float) size.width(), (float) size.height(), null, true, false, 0); // text goes its own way
        chart.paint(
                new Pen(shapes, new ChartLettering(typesetter, lettering, ink, size.height()), Palette.PAPER),
                size.width());
        shapes.dispose();
        ink.restoreState();
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, double thickness, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorStroke(colour);
        ink.setLineWidth((float) thickness);
        ink.moveTo((float) x1, up(y1));
        ink.lineTo((float) x2, up(y2));
        ink.stroke();
    }

    @Override
    public void dotted(double x1, double y, double x2, double thickness, Color colour) {
        ink().setLineDash((float) thickness, (float) (2 * thickness), 0f);
        line(x1, y, x2, y, thickness, colour);
        ink().setLineDash(0f);
    }

    @Override
    public void fillBox(double x, double top, double width, double height, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorFill(colour);
        ink.rectangle((float) x, up(top + height), (float) width, (float) height);
        ink.fill();
    }

    @Override
    public void strokeBox(double x, double top, double width, double height, double thickness, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorStroke(colour);
        ink.setLineWidth((float) thickness);
        ink.rectangle((float) x, up(top + height), (float) width, (float) height);
        ink.stroke();
    }

    @Override
    public void fillTriangle(double x1, double y1, double x2, double y2, double x3, double y3, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorFill(colour);
        ink.moveTo((float) x1, up(y1));
        ink.lineTo((float) x2, up(y2));
        ink.lineTo((float) x3, up(y3));
        ink.closePath();
        ink.fill();
    }

    @Override
    public void fillHalfDisc(double x, double y, double radius, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorFill(colour);
        ink.arc((float) (x - radius), up(y + radius), (float) (x + radius), up(y - radius), -90, 180);
        ink.closePath();
        ink.fill();
    }

    @Override
    public void ring(double x, double y, double radius, double thickness, Color colour) {
        PdfContentByte ink = ink();
        ink.setColorStroke(colour);
        ink.setLineWidth((float) thickness);
        ink.circle((float) x, up(y), (float) radius);
        ink.stroke();
    }

    @Override
    public void link(String anchor, double left, double top, double right, double bottom) {
        ink().localGoto(anchor, (float) left, up(bottom), (float) right, up(top));
    }

    @Override
    public void anchor(String name, double left, double top) {
        PdfDestination place = new PdfDestination(PdfDestination.XYZ, (float) left, up(top), 0);
        ink().localDestination(name, place); // refuses a name it knows
    }

    @Override
    public void outline(Outlined heading, double top) {
        outline.add(heading.level(), heading.title(), new PdfDestination(PdfDestination.FITH, up(top)));
    }

    private PdfContentByte ink() {
        return writer.getDirectContent();
    }

    private float up(double y) {
        return (float) (height - y);
    }
}
