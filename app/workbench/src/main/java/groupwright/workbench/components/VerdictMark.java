package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.Locale;

/**
 * Paints the marks of verdicts, 12 by 12, all of which grow from the upright of the criterion bar.
 *
 * @param locale in which the mark is named
 */
public record VerdictMark(Locale locale) implements Painter<Mark> {
    /** Width and height. */
    public static final double SIZE = 12;

    private static final double MIDDLE = SIZE / 2;

    @Override
    public Extent extent(Mark mark) {
        return new Extent(SIZE, SIZE, -1);
    }

    @Override
    public String name(Mark mark) {
        return mark.word(locale);
    }

    @Override
    public void paint(Drawing drawing, Mark mark) {
        paintAt(drawing, mark, Math.floor((drawing.width() - SIZE) / 2), Math.floor((drawing.height() - SIZE) / 2));
    }

    /** Paints a mark with its upper left corner at a place. */
    static void paintAt(Drawing whole, Mark mark, double x, double y) {
        try (Drawing drawing = whole.part(x, y, SIZE, SIZE)) {
            Token colour = mark.colour();
            switch (mark) {
                case MEETS -> {
                    drawing.upright(2, 0, SIZE, 2, colour);
                    drawing.fill(halfDisc(), colour);
                }
                case MISSES -> {
                    drawing.upright(8, 0, SIZE, 2, colour);
                    drawing.fill(wedge(), colour);
                }
                case CLOSE -> {
                    drawing.upright(5, 0, SIZE, 2, colour);
                    drawing.level(0, SIZE, 5, 2, colour);
                    drawing.upright(0, 3, 9, 1.5, colour);
                    drawing.upright(SIZE - 1.5, 3, 9, 1.5, colour);
                }
                case MISSING -> {
                    drawing.upright(5, 0, 2, 2, colour);
                    drawing.upright(5, 10, SIZE, 2, colour);
                    drawing.stroke(new Ellipse2D.Double(2.8, 2.8, 6.4, 6.4), 1.6, colour);
                }
                case CHANGED -> {
                    drawing.box(0, 1, SIZE, 10, colour);
                    drawing.level(2, 10, 3, 2, Token.CHANGED_INK);
                    drawing.level(2, 10, 7, 2, Token.CHANGED_INK);
                }
            }
        }
    }

    /** Right of the upright, a little away from it. */
    private static Path2D halfDisc() {
        Path2D path = new Path2D.Double();
        path.moveTo(5, 2);
        path.curveTo(11.3, 2, 11.3, 10, 5, 10);
        path.closePath();
        return path;
    }

    /** Left of the upright, pointing away from it. */
    private static Path2D wedge() {
        Path2D path = new Path2D.Double();
        path.moveTo(7, 1.5);
        path.lineTo(0, MIDDLE);
        path.lineTo(7, SIZE - 1.5);
        path.closePath();
        return path;
    }
}
