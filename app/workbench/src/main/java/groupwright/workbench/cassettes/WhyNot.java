package groupwright.workbench.cassettes;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.quantity.Cog;
import groupwright.drivetrain.search.BestSet;
import groupwright.workbench.components.Prose;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Where one types a cassette that one misses in the set, and is told why it is not there. */
final class WhyNot extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient CassetteWords say;
    private final JTextField field = new JTextField();
    private final Prose answer = new Prose("", Type.SECONDARY, Token.INK);
    private transient Optional<BestSet> set = Optional.empty();

    WhyNot(CassetteWords say) {
        super(new BorderLayout());
        setOpaque(false);
        this.say = say;
        JLabel label = new JLabel(say.words().text("why"));
        label.setFont(Type.BODY.font(Weight.STRONG));
        label.setLabelFor(field);
        field.setName("why not");
        field.setFont(Type.TABLE.font(Weight.REGULAR));
        field.putClientProperty("JTextField.placeholderText", say.words().text("why.example"));
        field.getAccessibleContext().setAccessibleName(say.words().text("why.name"));
        field.setPreferredSize(new Dimension(Look.pixels(240), Metric.FIELD.px()));
        field.addActionListener(event -> ask());
        JPanel line = new JPanel(new BorderLayout(Metric.STEP.px(), 0));
        line.setOpaque(false);
        line.add(label, BorderLayout.LINE_START);
        line.add(field, BorderLayout.CENTER);
        Stack stack = new Stack(Metric.HALF_STEP.units());
        stack.add(line);
        stack.add(answer);
        answer.setVisible(false);
        add(stack);
    }

    /** Questions are about this set from now on. */
    void about(BestSet next) {
        set = Optional.of(next);
        tell(answer(field.getText()));
    }

    private void ask() {
        tell(answer(field.getText()));
    }

    private void tell(String text) {
        answer.setText(text);
        answer.getAccessibleContext().setAccessibleName(text);
        answer.setVisible(!text.isEmpty());
        revalidate();
    }

    /** What is said of a typed cassette; empty where nothing is asked. */
    String answer(String text) {
        if (text.isBlank() || set.isEmpty()) {
            return "";
        }
        try {
            List<Integer> teeth = TypedTeeth.list(text, say.words());
            Cassette cassette = new Cassette(teeth.stream().map(Cog::new).toList());
            return say.standing(set.get().standing(cassette));
        } catch (IllegalArgumentException none) { // its message is a sentence for users
            String sentence = none.getMessage();
            String end = sentence.endsWith(".") ? "" : ".";
            return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + end;
        }
    }

    JTextField field() {
        return field;
    }
}
