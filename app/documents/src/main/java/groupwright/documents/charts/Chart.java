package groupwright.documents.charts;

/**
 * A chart: an immutable value that paints itself. Equal charts paint alike; nothing is remembered between paintings.
 */
public interface Chart {
    /** What it shows, in a few words. */
    String title();

    /** What is drawn and in which unit; stands muted behind the title. */
    String caption();

    /** What it says, in one sentence, for those who do not see it. */
    String description();

    /** The numbers behind it. */
    ChartTable table();

    /**
     * Room it wants, without its title.
     *
     * @param width what is to be had; the answer is wider where the chart could not be read in that
     */
    ChartSize size(TextWidths widths, double width);

    /**
     * Paints it, without its title, from the origin over a width.
     *
     * @param width as {@link #size} answered
     */
    void paint(Pen pen, double width);
}
