package groupwright.documents.pages;

/**
 * Where things stand on a page, in points from its upper left corner. What is the same on every paper is a constant:
 * columns keep their width, so that a document breaks its lines alike on all.
 *
 * @param width of the paper
 * @param height of the paper
 */
record PageGeometry(double width, double height) {
    private static final double POINTS_PER_MM = 72 / 25.4;

    static final double LEFT = mm(19);
    static final double TEXT_WIDTH = mm(129);
    static final double TRACE_LEFT = mm(19 + 129 + 7.5);
    static final double TRACE_WIDTH = mm(40);
    static final double RIGHT = mm(19 + 129 + 7.5 + 40);
    /** Text and trace column in one. */
    static final double FULL_WIDTH = RIGHT - LEFT;

    static final double HEAD_BASELINE = mm(14.6);
    static final double HEAD_RULE = mm(17.5);
    static final double BODY_TOP = mm(22);

    private static final double FOOT_RULE_ABOVE_EDGE = mm(15);
    private static final double BODY_ABOVE_EDGE = mm(21);

    static PageGeometry of(PaperSize paper) {
        return new PageGeometry(mm(paper.widthMm()), mm(paper.heightMm()));
    }

    double bodyBottom() {
        return height - BODY_ABOVE_EDGE;
    }

    double bodyHeight() {
        return bodyBottom() - BODY_TOP;
    }

    double footRule() {
        return height - FOOT_RULE_ABOVE_EDGE;
    }

    double footBaseline() {
        return footRule() + 12;
    }

    private static double mm(double millimetres) {
        return millimetres * POINTS_PER_MM;
    }
}
