package groupwright.workbench.form;

import groupwright.workbench.look.Metric;
import java.awt.Insets;
import java.awt.KeyboardFocusManager;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ScrollPaneConstants;
import javax.swing.UIManager;

/** Several lines of text, as high as its text; Enter ends it, Shift+Enter begins a line, Tab leaves it. */
final class WordsEditor implements Editor {
    private final JTextArea area = new JTextArea();
    private final JScrollPane frame = new JScrollPane(
            area, ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
    private boolean quiet;

    WordsEditor() {
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setMargin(margin());
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        TextKeys.bind(area, "shift ENTER", () -> area.replaceSelection("\n"));
        TextKeys.bind(area, "F2", area::selectAll);
        frame.setWheelScrollingEnabled(false); // the form scrolls, not the field
    }

    /** Level with fields of one line; at 100 %, since the look enlarges margins itself. */
    private static Insets margin() {
        Insets line = UIManager.getInsets("TextField.margin");
        int above = Metric.HALF_STEP.units() + 1;
        return new Insets(above, line.left, above, line.right);
    }

    @Override
    public JComponent component() {
        return frame;
    }

    @Override
    public JComponent input() {
        return area;
    }

    @Override
    public String text() {
        return area.getText();
    }

    @Override
    public void show(String text) {
        quiet = true;
        area.setText(text);
        area.setCaretPosition(0);
        quiet = false;
    }

    @Override
    public void lock() {
        area.setEditable(false);
    }

    @Override
    public void tell(Runnable typing, Runnable done) {
        TextKeys.typing(area, () -> {
            area.revalidate(); // the row grows with its text
            if (!quiet) {
                typing.run();
            }
        });
        TextKeys.done(area, done);
    }
}
