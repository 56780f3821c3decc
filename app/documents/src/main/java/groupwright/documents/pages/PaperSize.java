package groupwright.documents.pages;

/** The paper a document is printed on; columns are the same on each, the number of lines is not. */
public enum PaperSize {
    /** 210 × 297 mm, ISO 216. */
    A4(210, 297),
    /** 8.5 × 11 inch, ANSI/ASME Y14.1 size A. */
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    PaperSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    double widthMm() {
        return widthMm;
    }

    double heightMm() {
        return heightMm;
    }
}
