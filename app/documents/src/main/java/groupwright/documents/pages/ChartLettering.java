package groupwright.documents.pages;

import com.lowagie.text.pdf.PdfContentByte;
import groupwright.documents.charts.InterFont;
import groupwright.documents.charts.Lettering;
import java.awt.Color;
import java.awt.Graphics2D;

/** Writes text of a chart past its graphics, in the fonts of the page, so that it stays text. */
final class ChartLettering extends ChartWidths implements Lettering {
    private final PageLettering lettering;
    private final PdfContentByte ink;
    private final double height;

    /**
     * Lettering for one chart.
     *
     * @param height of the chart, from whose lower edge the library counts
     */
    ChartLettering(Typesetter typesetter, PageLettering lettering, PdfContentByte ink, double height) {
        super(typesetter);
        this.lettering = lettering;
        this.ink = ink;
        this.height = height;
    }

    @Override
    public void write(
            Graphics2D graphics, String text, double x, double baseline, InterFont font, double size, Color colour) {
        ink.saveState(); // the graphics do not learn of another colour
        double at = x;
        for (Run run : runs(text, font, size, colour)) {
            lettering.write(ink, run, at, height - baseline);
            at += run.width();
        }
        ink.restoreState();
    }
}
