package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import java.awt.geom.Line2D;

/** The sign of what is alive: a thin line with a tick at each end, as on a workshop drawing. */
public enum DimensionLine {
    THIN,
    /** Twice as strong: selected, or here. */
    STRONG,
    /** Nothing there yet. */
    DASHED,
    /** Changed by the last step. */
    DOUBLED;

    /** Length of the ticks at the ends. */
    public static final double TICK = 5;

    private static final double APART = 3;
    private static final double DASH = 3;
    private static final double GAP = 2;

    private double thickness() {
        return this == STRONG ? 2 : 1;
    }

    /**
     * Paints it level.
     *
     * @param y upper edge of the line
     */
    public void level(Drawing drawing, double from, double to, double y, Token colour) {
        double thick = thickness();
        if (this == DASHED) {
            drawing.dashes(new Line2D.Double(from, y + thick / 2, to, y + thick / 2), thick, DASH, GAP, colour);
        } else {
            drawing.level(from, to, y, thick, colour);
        }
        if (this == DOUBLED) {
            drawing.level(from, to, y + APART, thick, colour);
        }
        double above = y + thick / 2 - TICK / 2;
        drawing.upright(from, above, above + TICK, thick, colour);
        drawing.upright(to - thick, above, above + TICK, thick, colour);
    }

    /**
     * Paints it upright, as at the left edge of a worst bike.
     *
     * @param x left edge of the line
     */
    public void upright(Drawing drawing, double x, double from, double to, Token colour) {
        double thick = thickness();
        if (this == DASHED) {
            drawing.dashes(new Line2D.Double(x + thick / 2, from, x + thick / 2, to), thick, DASH, GAP, colour);
        } else {
            drawing.upright(x, from, to, thick, colour);
        }
        if (this == DOUBLED) {
            drawing.upright(x + APART, from, to, thick, colour);
        }
        double left = x + thick / 2 - TICK / 2;
        drawing.level(left, left + TICK, from, thick, colour);
        drawing.level(left, left + TICK, to - thick, thick, colour);
    }
}
