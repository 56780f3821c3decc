package groupwright.workbench.concepts;

import groupwright.workbench.components.Mark;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import java.awt.BorderLayout;
import java.util.Locale;
import javax.accessibility.AccessibleContext;
import javax.swing.JPanel;

/** Why something was refused: a mark and a sentence; not there while there is nothing to say. */
final class SaidLine extends JPanel {
    private static final long serialVersionUID = 1L;

    private final Prose sentence = new Prose("", Type.SECONDARY, Token.INK);

    SaidLine(Locale locale) {
        super(new BorderLayout(Metric.STEP.px(), 0));
        setOpaque(false);
        add(new PaintedView<>(new VerdictMark(locale), Mark.MISSES), BorderLayout.LINE_START);
        add(sentence, BorderLayout.CENTER);
        setVisible(false);
    }

    void say(String said) {
        String before = sentence.getText();
        if (said.equals(before)) {
            return;
        }
        sentence.setText(said);
        setVisible(!said.isEmpty());
        getAccessibleContext().setAccessibleName(said);
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_DESCRIPTION_PROPERTY, before, said);
        revalidate();
        repaint();
    }

    String said() {
        return sentence.getText();
    }
}
