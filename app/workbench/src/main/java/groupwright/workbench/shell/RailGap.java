package groupwright.workbench.shell;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.geom.Line2D;
import javax.swing.JComponent;

/** The word of a stage; beside it the spine is dotted, because work steps back and forth between stages. */
final class RailGap extends JComponent {
    private static final double SPINE = 20;
    private static final double WORD = 40;

    private final String word;
    private final boolean first;

    RailGap(String word, boolean first) {
        this.word = word;
        this.first = first;
        setAlignmentX(LEFT_ALIGNMENT);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                Metric.RAIL.px(), Metric.STAGE_ROW.px() + (first ? Metric.STEP.px() : Metric.STAGE_GAP.px()));
    }

    @Override
    public Dimension getMaximumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            double height = drawing.height();
            if (!first) {
                drawing.dashes(new Line2D.Double(SPINE, 0, SPINE, height), 1, 1, 3, Token.EDGE);
            }
            drawing.text(
                    word,
                    WORD,
                    Type.CAPTION.baseline(height - Metric.STAGE_ROW.units() / 2.0),
                    Type.CAPTION,
                    Weight.STRONG,
                    Token.MUTED);
        }
    }
}
