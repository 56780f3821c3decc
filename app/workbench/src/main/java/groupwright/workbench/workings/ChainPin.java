package groupwright.workbench.workings;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;

/**
 * Paints one pin of the way from need to page with the word of its step: filled where one is, dashed where nothing is yet.
 *
 * @param last whether the line ends here
 * @param first whether it begins here
 */
record ChainPin(boolean first, boolean last) implements Painter<ChainPin.Value> {
    private static final double X = 6;
    private static final double RADIUS = 4;
    private static final double WORD = 20;
    private static final double WIDTH = 94;
    private static final double HEIGHT = 26;

    /**
     * A pin.
     *
     * @param word of its step; empty where the pin above has the same
     * @param nextThere whether something stands at the next pin
     */
    record Value(String word, WorkingsSheet.There there, boolean nextThere, String name) {}

    @Override
    public Extent extent(Value value) {
        return new Extent(WIDTH, HEIGHT, Type.SECONDARY.baseline(HEIGHT / 2));
    }

    @Override
    public String name(Value value) {
        return value.name();
    }

    @Override
    public void paint(Drawing drawing, Value value) {
        double middle = HEIGHT / 2;
        if (!first) {
            line(drawing, 0, middle - RADIUS, value.there() != WorkingsSheet.There.NOTHING_YET);
        }
        if (!last) {
            boolean solid = value.nextThere() && value.there() != WorkingsSheet.There.NOTHING_YET;
            line(drawing, middle + RADIUS, Math.max(HEIGHT, drawing.height()), solid);
        }
        Ellipse2D pin = new Ellipse2D.Double(X - RADIUS, middle - RADIUS, 2 * RADIUS, 2 * RADIUS);
        switch (value.there()) {
            case HERE ->
                drawing.fill(
                        new Ellipse2D.Double(X - RADIUS - 1, middle - RADIUS - 1, 2 * RADIUS + 2, 2 * RADIUS + 2),
                        Token.ACCENT);
            case SOMETHING -> drawing.stroke(pin, 1.2, Token.EDGE);
            case NOTHING_YET -> drawing.dashes(pin, 1, 2, 2, Token.EDGE);
        }
        drawing.text(value.word(), WORD, Type.SECONDARY.baseline(middle), Type.SECONDARY, Weight.REGULAR, Token.MUTED);
    }

    private static void line(Drawing drawing, double from, double to, boolean solid) {
        if (solid) {
            drawing.upright(X - 0.5, from, to, 1, Token.EDGE);
        } else {
            drawing.dashes(new Line2D.Double(X, from, X, to), 1, 1, 3, Token.EDGE);
        }
    }
}
