package groupwright.workbench.form;

import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;

/** One line of text; numbers stand at the right, before their unit. */
final class LineEditor implements Editor {
    private final JTextField field = new JTextField();
    private boolean quiet;

    LineEditor() {
        TextKeys.bind(field, "F2", field::selectAll);
    }

    /** A line for a number. */
    static LineEditor number(String unit) {
        LineEditor editor = new LineEditor();
        editor.field.setHorizontalAlignment(SwingConstants.TRAILING);
        if (!unit.isEmpty()) {
            JLabel label = new StyledLabel(unit, Type.CAPTION, Weight.REGULAR, Token.MUTED);
            label.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.HALF_STEP.px()));
            editor.field.putClientProperty("JTextField.trailingComponent", label);
        }
        return editor;
    }

    @Override
    public JComponent component() {
        return field;
    }

    @Override
    public JComponent input() {
        return field;
    }

    @Override
    public String text() {
        return field.getText();
    }

    @Override
    public void show(String text) {
        quiet = true;
        field.setText(text);
        field.setCaretPosition(0);
        quiet = false;
    }

    @Override
    public void lock() {
        field.setEditable(false);
    }

    @Override
    public void tell(Runnable typing, Runnable done) {
        TextKeys.typing(field, () -> {
            if (!quiet) {
                typing.run();
            }
        });
        TextKeys.done(field, done);
    }
}
