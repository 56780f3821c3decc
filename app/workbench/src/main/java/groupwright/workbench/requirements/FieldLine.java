package groupwright.workbench.requirements;

import groupwright.workbench.components.Mark;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Locale;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** A labelled field, under which is said what is wrong with it. */
final class FieldLine extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LABELS = 120;
    private static final int FIELDS = 360;

    private final JComponent field;
    private final Locale locale;
    private String said = "";

    /** @param behind what stands behind the field, for example its unit */
    FieldLine(String label, JComponent field, JComponent behind, Locale locale) {
        super(new BorderLayout(Metric.STEP.px(), 0));
        this.field = field;
        this.locale = locale;
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, 0, Metric.STEP.px(), 0));
        JLabel name = new JLabel(label);
        name.setFont(Type.SECONDARY.font(Weight.REGULAR));
        name.setForeground(Token.MUTED.colour());
        name.setLabelFor(field);
        name.setPreferredSize(new Dimension(Look.pixels(LABELS), Metric.FIELD.px()));
        JPanel top = new JPanel(new BorderLayout());
        top.setOpaque(false);
        top.add(name, BorderLayout.NORTH);
        add(top, BorderLayout.LINE_START);
        JPanel room = new JPanel(new BorderLayout());
        room.setOpaque(false);
        field.setPreferredSize(new Dimension(Look.pixels(FIELDS), field.getPreferredSize().height));
        room.add(field, BorderLayout.LINE_START);
        JPanel above = new JPanel(new BorderLayout());
        above.setOpaque(false);
        above.add(room, BorderLayout.NORTH);
        add(above, BorderLayout.CENTER);
        add(behind, BorderLayout.LINE_END);
        field.getAccessibleContext().setAccessibleName(label);
    }

    /** It takes no more height than it needs. */
    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }

    /** Says what is wrong; nothing takes it away. */
    void say(String sentence) {
        said = sentence;
        field.putClientProperty("JComponent.outline", sentence.isEmpty() ? null : "error");
        field.getAccessibleContext().setAccessibleDescription(sentence);
        BorderLayout layout = (BorderLayout) getLayout();
        if (layout.getLayoutComponent(BorderLayout.SOUTH) != null) {
            remove(layout.getLayoutComponent(BorderLayout.SOUTH));
        }
        if (!sentence.isEmpty()) {
            JPanel line = new JPanel(new BorderLayout(Metric.STEP.px(), 0));
            line.setOpaque(false);
            line.setBorder(BorderFactory.createEmptyBorder(
                    Metric.HALF_STEP.px(), Look.pixels(LABELS) + Metric.STEP.px(), 0, 0));
            line.add(new PaintedView<>(new VerdictMark(locale), Mark.MISSES), BorderLayout.LINE_START);
            line.add(new Prose(sentence, Type.SECONDARY, Token.INK), BorderLayout.CENTER);
            add(line, BorderLayout.SOUTH);
        }
        revalidate();
        repaint();
    }

    String said() {
        return said;
    }

    JComponent field() {
        return field;
    }
}
