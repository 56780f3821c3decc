package groupwright.documents.html;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartSize;
import groupwright.documents.charts.Palette;
import groupwright.documents.charts.Pen;
import groupwright.documents.charts.TextWidths;

/** Writes charts as drawings inside the page, with their text as text. */
final class ChartWriter {
    /** Room beside the table of contents on a usual screen. */
    private static final double WIDTH = 680;
    /** From the pixels of a chart to those of a page, whose text is larger. */
    private static final double SCALE = 1.2;

    private final TextWidths widths;

    ChartWriter(TextWidths widths) {
        this.widths = widths;
    }

    /**
     * Writes a drawing.
     *
     * @param name of the figure it stands in, of which the names inside are made
     */
    void write(Chart chart, String name, Html html) {
        ChartSize size = chart.size(widths, WIDTH);
        html.open("div", "class", "scroll");
        html.open(
                "svg",
                "role",
                "img",
                "aria-labelledby",
                name + "-title",
                "aria-describedby",
                name + "-description",
                "viewBox",
                "0 0 " + Decimals.of(size.width()) + " " + Decimals.of(size.height()),
                "width",
                Decimals.of(size.width() * SCALE),
                "height",
                Decimals.of(size.height() * SCALE));
        html.line().element("title", chart.title(), "id", name + "-title").line();
        html.element("desc", chart.description(), "id", name + "-description").line();
        chart.paint(new Pen(new SvgInk(html, widths), widths, Palette.PAPER), size.width());
        html.close("svg").close("div").line();
    }
}
