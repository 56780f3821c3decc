package groupwright.workbench.form;

import groupwright.workbench.components.Mark;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;

/** A mark and a sentence that wraps; not there while there is nothing to say. */
public final class Sentence extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JTextArea text = new JTextArea();

    public Sentence(Mark sign) {
        super(new BorderLayout(Look.pixels(8), 0));
        setOpaque(false);
        JLabel mark = new JLabel(new MarkIcon(sign));
        mark.setVerticalAlignment(SwingConstants.TOP);
        mark.setBorder(BorderFactory.createEmptyBorder(Metric.HALF_STEP.px() / 2, 0, 0, 0));
        text.setEditable(false);
        text.setFocusable(false); // its words are in the description of the field it speaks of
        text.setOpaque(false);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setBorder(BorderFactory.createEmptyBorder());
        text.setMargin(new java.awt.Insets(0, 0, 0, 0));
        add(mark, BorderLayout.LINE_START);
        add(text, BorderLayout.CENTER);
        setVisible(false);
        updateUI();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (text != null) { // the constructor above it calls this too early
            text.setFont(Type.SECONDARY.font(Weight.REGULAR));
            text.setForeground(Token.INK.colour());
        }
    }

    /** Says a sentence; an empty one takes mark and words away. */
    public void say(String sentence) {
        text.setText(sentence);
        setVisible(!sentence.isEmpty());
    }

    /** What is said. */
    public String said() {
        return text.getText();
    }

    /** Its height at a width. */
    int heightAt(int width) {
        if (!isVisible()) {
            return 0;
        }
        text.setSize(Math.max(1, width - Look.pixels(20)), Short.MAX_VALUE);
        return Math.max(text.getPreferredSize().height, Look.pixels(16));
    }
}
