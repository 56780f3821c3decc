package groupwright.documents.pages;

/** Where things stand on an A4 page, in points from its upper left corner. */
final class PageGeometry {
    static final double POINTS_PER_MM = 72 / 25.4;
    static final double WIDTH = mm(210);
    static final double HEIGHT = mm(297);
    static final double LEFT = mm(19);
    static final double TEXT_WIDTH = mm(129);
    static final double TRACE_LEFT = mm(19 + 129 + 7.5);
    static final double TRACE_WIDTH = mm(40);
    static final double RIGHT = mm(210 - 14.5);
    static final double HEAD_BASELINE = mm(14.6);
    static final double HEAD_RULE = mm(17.5);
    static final double BODY_TOP = mm(22);
    static final double BODY_BOTTOM = mm(297 - 21);
    static final double FOOT_RULE = mm(297 - 15);
    static final double FOOT_BASELINE = FOOT_RULE + 12;

    private PageGeometry() {}

    private static double mm(double millimetres) {
        return millimetres * POINTS_PER_MM;
    }
}
