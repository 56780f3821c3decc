package groupwright.workbench.cassettes;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.Dimension;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** A field of a limit, with its unit. */
final class LimitField extends JTextField {
    private static final long serialVersionUID = 1L;

    private static final int BARE = 42;
    private static final int WITH_UNIT = 56;
    private static final int WIDE = 132;
    private static final Set<Entry> LISTS = Set.of(Entry.WITH, Entry.WITHOUT);

    private final Entry entry;
    private final String unit;

    /** @param typed told of each change */
    LimitField(Entry entry, Words words, Consumer<String> typed) {
        this.entry = entry;
        setName("limit " + entry);
        setFont(Type.TABLE.font(Weight.REGULAR));
        setHorizontalAlignment(SwingConstants.TRAILING);
        getAccessibleContext().setAccessibleName(words.text("name." + entry));
        this.unit = words.text("unit." + entry);
        if (!unit.isEmpty()) {
            JLabel label = new JLabel(unit);
            label.setFont(Type.CAPTION.font(Weight.REGULAR));
            label.setForeground(Token.MUTED.colour());
            label.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.HALF_STEP.px()));
            putClientProperty("JTextField.trailingComponent", label);
        }
        getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                typed.accept(getText());
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                typed.accept(getText());
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                typed.accept(getText());
            }
        });
    }

    /** Marks it as wrong; an empty sentence takes the mark away. */
    void wrong(String sentence) {
        putClientProperty("JComponent.outline", sentence.isEmpty() ? null : "error"); // FlatLaf's way to say none
        getAccessibleContext().setAccessibleDescription(sentence);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(
                Look.pixels(LISTS.contains(entry) ? WIDE : unit.isEmpty() ? BARE : WITH_UNIT), Metric.FIELD.px());
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }
}
