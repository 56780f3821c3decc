package groupwright.workbench.shell;

import groupwright.definition.assessment.Rung;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** How far the project's requirements have come, at the foot of the rail; one line where the window is low. */
final class RailLadder extends JComponent implements Accessible {
    private static final double ROW = 26;
    private static final double BAR = 4;
    private static final double HEAD = 32;
    private static final List<Rung> FROM_THE_TOP = List.of(Rung.TESTED, Rung.CALCULATED, Rung.MEASURABLE, Rung.STATED);

    private final transient Words words;
    private transient Optional<RailSheet.Ladder> ladder = Optional.empty();
    private boolean low;

    RailLadder(Words words) {
        this.words = words;
    }

    void show(Optional<RailSheet.Ladder> shown, boolean isLow) {
        boolean resized = isLow != low || shown.isPresent() != ladder.isPresent();
        ladder = shown;
        low = isLow;
        if (resized) {
            revalidate();
        }
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        double height = ladder.isEmpty() ? 0 : low ? HEAD : HEAD + FROM_THE_TOP.size() * ROW + Metric.STEP.units();
        return new Dimension(Metric.RAIL.px(), Look.pixels(height));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (ladder.isEmpty()) {
            return;
        }
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            double left = Metric.GAP.units();
            double right = drawing.width() - Metric.GAP.units();
            RailSheet.Ladder shown = ladder.get();
            drawing.level(left, right, 0, 1, Token.HAIRLINE);
            if (low) {
                drawing.text(
                        oneLine(shown),
                        left,
                        Type.CAPTION.baseline(HEAD / 2),
                        Type.CAPTION,
                        Weight.REGULAR,
                        Token.MUTED);
                return;
            }
            drawing.text(
                    words.text("ladder.head", Integer.toString(shown.all())),
                    left,
                    Type.CAPTION.baseline(HEAD / 2),
                    Type.CAPTION,
                    Weight.STRONG,
                    Token.MUTED);
            double y = HEAD;
            for (Rung rung : FROM_THE_TOP) {
                paint(drawing, shown, rung, left, right, y);
                y += ROW;
            }
        }
    }

    private void paint(Drawing drawing, RailSheet.Ladder shown, Rung rung, double left, double right, double y) {
        double baseline = Type.SECONDARY.baseline(y + (ROW - BAR) / 2 - 2);
        drawing.text(words.text("rung." + rung), left, baseline, Type.SECONDARY, Weight.REGULAR, Token.INK);
        drawing.textUpTo(Integer.toString(shown.at(rung)), right, baseline, Type.SECONDARY, Weight.STRONG, Token.INK);
        double top = y + ROW - BAR - 3;
        drawing.box(left, top, right - left, BAR, Token.HAIRLINE);
        if (shown.all() > 0 && shown.at(rung) > 0) {
            drawing.box(left, top, (right - left) * shown.at(rung) / shown.all(), BAR, Token.INK);
        }
    }

    private String oneLine(RailSheet.Ladder shown) {
        return words.text("ladder.line", Integer.toString(shown.at(Rung.TESTED)), Integer.toString(shown.all()));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.LABEL;
                }

                @Override
                public String getAccessibleName() {
                    return ladder.map(RailLadder.this::oneLine).orElse("");
                }
            };
        }
        return accessibleContext;
    }
}
