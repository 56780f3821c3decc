package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;

/**
 * Paints evidence as pins on one line: solid there, ring planned, dashed nothing yet, or a mark in place of a pin.
 *
 * @param ground what it stands on, which fills the rings
 */
public record EvidencePins(Token ground) implements Painter<Evidence> {
    private static final double APART = 18;
    private static final double RADIUS = 4;
    private static final double FIRST = 6;
    private static final double HEIGHT = 12;

    @Override
    public Extent extent(Evidence evidence) {
        return new Extent(2 * FIRST + 2 * APART, HEIGHT, -1);
    }

    @Override
    public String name(Evidence evidence) {
        return evidence.name();
    }

    @Override
    public void paint(Drawing drawing, Evidence evidence) {
        double middle = Math.floor(drawing.height() / 2);
        for (int i = 1; i < evidence.pins().size(); i++) {
            double from = FIRST + (i - 1) * APART + RADIUS + 1;
            double to = FIRST + i * APART - RADIUS - 1;
            if (evidence.pins().get(i) == Evidence.Pin.NOTHING) {
                drawing.dashes(new Line2D.Double(from, middle, to, middle), 1, 2, 2, Token.EDGE);
            } else {
                drawing.level(from, to, middle - 0.5, 1, Token.EDGE);
            }
        }
        for (int i = 0; i < evidence.pins().size(); i++) {
            paintPin(drawing, evidence.pins().get(i), FIRST + i * APART, middle);
        }
    }

    private void paintPin(Drawing drawing, Evidence.Pin pin, double x, double y) {
        double corner = VerdictMark.SIZE / 2;
        Ellipse2D ring = new Ellipse2D.Double(x - RADIUS + 0.5, y - RADIUS + 0.5, 2 * RADIUS - 1, 2 * RADIUS - 1);
        switch (pin) {
            case HOLDS -> drawing.fill(new Ellipse2D.Double(x - RADIUS, y - RADIUS, 2 * RADIUS, 2 * RADIUS), Token.INK);
            case PLANNED -> {
                drawing.fill(ring, ground);
                drawing.stroke(ring, 1.5, Token.EDGE);
            }
            case NOTHING -> {
                drawing.fill(ring, ground);
                drawing.dashes(ring, 1.4, 2, 2, Token.MISSING);
            }
            case CHANGED -> VerdictMark.paintAt(drawing, Mark.CHANGED, x - corner, y - corner);
            case MISSES -> VerdictMark.paintAt(drawing, Mark.MISSES, x - corner, y - corner);
        }
    }
}
