package groupwright.workbench.claims;

import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.event.ActionEvent;
import java.util.List;
import java.util.Locale;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;

/** Asks in place for what a decision needs: some lines, the button that does it, one to leave it, and why it was refused. */
final class AskPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    /** A line to fill in. */
    record Field(String label, String given, int width) {}

    private final transient List<JTextField> fields;
    private final JPanel refusal = new JPanel(new BorderLayout(Metric.STEP.px(), 0));
    private final Locale locale;

    AskPanel(Locale locale, List<Field> asked, String action, Runnable act, String leaveWords, Runnable leave) {
        super(new BorderLayout());
        this.locale = locale;
        setOpaque(false);
        Line line = new Line(Metric.STEP.units());
        fields = asked.stream().map(AskPanel::field).toList();
        for (int i = 0; i < fields.size(); i++) {
            JLabel label = new JLabel(asked.get(i).label());
            label.setFont(Type.SECONDARY.font(Weight.REGULAR));
            label.setForeground(Token.MUTED.colour());
            label.setLabelFor(fields.get(i));
            line.add(label);
            line.add(fields.get(i));
            bind(fields.get(i), "ENTER", act);
            bind(fields.get(i), "ESCAPE", leave);
        }
        ActionButton main = ActionButton.main(action, act);
        main.setName("claims.now");
        line.add(main);
        line.add(ActionButton.plain(leaveWords, leave));
        refusal.setOpaque(false);
        Stack stack = new Stack(Metric.HALF_STEP.units());
        stack.add(line);
        stack.add(refusal);
        add(stack);
    }

    private static JTextField field(Field asked) {
        JTextField field = new JTextField(asked.given());
        field.setPreferredSize(new Dimension(Look.pixels(asked.width()), field.getPreferredSize().height));
        field.getAccessibleContext().setAccessibleName(asked.label());
        return field;
    }

    private static void bind(JComponent field, String key, Runnable action) {
        field.getInputMap().put(KeyStroke.getKeyStroke(key), key);
        field.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    String text(int field) {
        return fields.get(field).getText();
    }

    JTextField field(int index) {
        return fields.get(index);
    }

    /** Says why nothing was changed; what was typed stays. */
    void refuse(String sentence) {
        refusal.removeAll();
        JPanel mark = new JPanel(new BorderLayout());
        mark.setOpaque(false);
        mark.add(new PaintedView<>(new VerdictMark(locale), Mark.MISSES), BorderLayout.NORTH);
        refusal.add(mark, BorderLayout.LINE_START);
        Prose prose = new Prose(sentence, Type.TABLE, Token.INK);
        prose.setName("claims.refusal");
        refusal.add(prose);
        fields.forEach(field -> field.getAccessibleContext().setAccessibleDescription(sentence));
        revalidate();
        repaint();
    }
}
