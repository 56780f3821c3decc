package groupwright.workbench.components;

import groupwright.definition.assessment.Rung;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import java.awt.geom.Line2D;

/** Paints a ladder: two thin uprights and the rungs between them, from the bottom. */
public enum LadderMark implements Painter<Ladder> {
    /** In rows of tables. */
    IN_ROW(16),
    /** In grids. */
    IN_GRID(20);

    private static final double DRAWN = 16;
    private static final double LEFT = 0;
    private static final double RIGHT = 15;
    private static final double LOWEST = 11.5;
    private static final double APART = 3.75;
    private static final double THICK = 2;

    private final double size;

    LadderMark(double size) {
        this.size = size;
    }

    @Override
    public Extent extent(Ladder ladder) {
        return new Extent(size, size, -1);
    }

    @Override
    public String name(Ladder ladder) {
        return ladder.name();
    }

    @Override
    public void paint(Drawing drawing, Ladder ladder) {
        double unit = size / DRAWN;
        double x = Math.floor((drawing.width() - size) / 2);
        double y = Math.floor((drawing.height() - size) / 2);
        try (Drawing own = drawing.part(x, y, size, size)) {
            own.upright(LEFT, 0, size, 1, Token.EDGE);
            own.upright(RIGHT * unit, 0, size, 1, Token.EDGE);
            for (Rung rung : Rung.values()) {
                double top = (LOWEST - rung.ordinal() * APART) * unit;
                paintRung(own, ladder.at(rung), 2 * unit, (DRAWN - 2) * unit, top, THICK * unit);
            }
        }
    }

    /**
     * Paints one rung.
     *
     * @param top its upper edge
     */
    static void paintRung(Drawing drawing, Ladder.Step step, double from, double to, double top, double thick) {
        switch (step) {
            case REACHED -> drawing.level(from, to, top, thick, Token.INK);
            case FAILS -> {
                double middle = top + thick / 2;
                double drop = (to - from) * 0.26;
                drawing.stroke(
                        new Line2D.Double(from - thick / 4, middle - drop / 3, to - drop, middle + drop * 2 / 3),
                        thick,
                        Token.MISSES);
            }
            case STALE -> {
                double third = (to - from) / 5;
                for (int dash = 0; dash < 3; dash++) {
                    double x = from + 2 * dash * third;
                    drawing.level(x, x + third, top, thick, Token.INK);
                }
            }
            case OPEN -> {} // an empty place says it
        }
    }
}
