package groupwright.documents.pages;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartSize;
import java.awt.Color;
import java.util.Optional;

/** What pages are drawn on, one after the other; lengths in points, y grows downwards from the upper edge. */
interface Canvas {
    /**
     * A heading as the outline names it.
     *
     * @param line of the template it comes from, from 1; empty for what every document carries
     * @param room what its lines cover, as if they stood at the upper edge of the page
     */
    record Outlined(int level, String title, Optional<Integer> line, Area room) {}

    /** Says where a live number stands, before anything of it is drawn. */
    void number(Piece.Number number, double x, double baseline);

    /** Writes a run of glyphs. */
    void text(Run run, double x, double baseline);

    /**
     * Paints a chart as lines and text.
     *
     * @param scale points for each of its pixels
     */
    void chart(Chart chart, ChartSize size, Typesetter typesetter, double x, double top, double scale);

    /** Draws a line with blunt ends. */
    void line(double x1, double y1, double x2, double y2, double thickness, Color colour);

    /** Draws a level line of square dots. */
    void dotted(double x1, double y, double x2, double thickness, Color colour);

    /** Fills a rectangle. */
    void fillBox(double x, double top, double width, double height, Color colour);

    /** Draws the outline of a rectangle. */
    void strokeBox(double x, double top, double width, double height, double thickness, Color colour);

    /** Fills a triangle. */
    void fillTriangle(double x1, double y1, double x2, double y2, double x3, double y3, Color colour);

    /** Fills the right half of a disc. */
    void fillHalfDisc(double x, double y, double radius, Color colour);

    /** Draws a circle. */
    void ring(double x, double y, double radius, double thickness, Color colour);

    /** Makes a rectangle lead to an anchor. */
    void link(String anchor, double left, double top, double right, double bottom);

    /** Names a place; of places with one name, in table heads that are repeated, the first counts. */
    void anchor(String name, double left, double top);

    /** Adds a heading to the outline, leading here. */
    void outline(Outlined heading, double top);
}
