package groupwright.workbench.form;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** The head of a part of a form: a hairline, its name, what can be done to it at the right. */
final class SectionHead extends JPanel implements RowStack.Part {
    private static final long serialVersionUID = 1L;

    private final Level level;

    /** A section of the record, or one item in it. */
    enum Level {
        SECTION,
        ITEM
    }

    SectionHead(Level level, String title, String note, List<Action> actions) {
        super(new BorderLayout(Metric.STEP.px(), 0));
        this.level = level;
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(above(), 0, 0, 0));
        Type type = level == Level.SECTION ? Type.BODY : Type.TABLE;
        JLabel name = new StyledLabel(title, type, Weight.STRONG, Token.INK);
        JLabel after = new StyledLabel(note, Type.SECONDARY, Weight.REGULAR, Token.MUTED);
        JPanel done = new JPanel();
        done.setLayout(new BoxLayout(done, BoxLayout.LINE_AXIS));
        done.setOpaque(false);
        actions.forEach(done::add);
        add(name, BorderLayout.LINE_START);
        add(after, BorderLayout.CENTER);
        add(done, BorderLayout.LINE_END);
    }

    private int above() {
        return level == Level.SECTION ? Metric.GAP.px() : Metric.STEP.px();
    }

    @Override
    public int heightAt(int width) {
        return above() + Look.pixels(32);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, above() - 1, getWidth(), 1))) {
            Token colour = level == Level.SECTION ? Token.EDGE : Token.HAIRLINE;
            drawing.box(0, 0, drawing.width(), 1, colour);
        }
    }
}
