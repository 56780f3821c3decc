package groupwright.workbench.form;

import groupwright.definition.record.Invalid;
import groupwright.workbench.components.Mark;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.Locale;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Asks in place, without a window of its own, why something is done: a line, the button that does it, and one to leave it. */
final class ReasonPanel extends JPanel implements RowStack.Part {
    private static final long serialVersionUID = 1L;

    private final JTextField reason = new JTextField();
    private final Sentence sentence = new Sentence(Mark.MISSES);
    private final transient FieldWords words;
    private final transient BiConsumer<String, Consumer<Invalid>> act;

    /**
     * @param action what the button says, for example {@code Retire R-005}
     * @param act does it for a reason, or refuses
     */
    ReasonPanel(Locale locale, String action, BiConsumer<String, Consumer<Invalid>> act, Runnable leave) {
        super(new BorderLayout(Metric.STEP.px(), 0));
        this.words = new FieldWords(locale);
        this.act = act;
        Words own = Words.of(ReasonPanel.class, locale);
        setOpaque(false);
        reason.getAccessibleContext().setAccessibleName(own.text("reason.name", action));
        reason.putClientProperty("JTextField.placeholderText", own.text("reason.ask"));
        JButton main = new JButton(action);
        main.putClientProperty("FlatLaf.styleClass", "main");
        main.addActionListener(pressed -> actNow());
        JButton cancel = new JButton(own.text("reason.leave"));
        cancel.addActionListener(pressed -> leave.run());
        TextKeys.bind(reason, "ENTER", this::actNow);
        TextKeys.bind(reason, "ESCAPE", leave);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.HALF_STEP.px(), 0));
        buttons.setOpaque(false);
        buttons.add(main);
        buttons.add(cancel);
        add(reason, BorderLayout.CENTER);
        add(buttons, BorderLayout.LINE_END);
        add(sentence, BorderLayout.SOUTH);
    }

    void actNow() {
        sentence.say("");
        act.accept(reason.getText(), invalid -> {
            sentence.say(words.refusal(invalid, invalid.field()));
            reason.getAccessibleContext().setAccessibleDescription(sentence.said());
            revalidate();
        });
    }

    JTextField reason() {
        return reason;
    }

    String sentence() {
        return sentence.said();
    }

    @Override
    public int heightAt(int width) {
        int below = sentence.heightAt(width);
        return Look.pixels(32) + (below == 0 ? 0 : below + Metric.STEP.px());
    }
}
