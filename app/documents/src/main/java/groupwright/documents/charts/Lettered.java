package groupwright.documents.charts;

/**
 * How a text in a chart is set.
 *
 * @param size in pixels of a screen at 100 %
 */
record Lettered(InterFont font, double size) {
    static final Lettered TITLE = new Lettered(InterFont.SEMIBOLD, 13);
    static final Lettered CAPTION = new Lettered(InterFont.REGULAR, 12);
    static final Lettered LABEL = new Lettered(InterFont.REGULAR, 11);
    /** Numbers at bars. */
    static final Lettered SMALL = new Lettered(InterFont.REGULAR, 10);

    Lettered strong() {
        return new Lettered(InterFont.SEMIBOLD, size);
    }

    double width(String text, TextWidths widths) {
        return widths.width(text, font, size);
    }
}
