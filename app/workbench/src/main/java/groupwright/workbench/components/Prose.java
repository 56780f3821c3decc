package groupwright.workbench.components;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Dimension;
import java.awt.Insets;
import java.util.Objects;
import javax.swing.JTextArea;
import javax.swing.text.DefaultCaret;
import javax.swing.text.View;

/** A text of one or more sentences that is broken into lines as the room asks. It can be read, not edited. */
public final class Prose extends JTextArea {
    /** Width it wants at first, in sizes of its type: about 66 letters. */
    private static final double MEASURE = 33;

    private final Type type;
    private final Token colour;
    private final Weight weight;

    /** A text in the usual weight. */
    public Prose(String text, Type type, Token colour) {
        this(text, type, Weight.REGULAR, colour);
    }

    public Prose(String text, Type type, Weight weight, Token colour) {
        super(text);
        this.type = Objects.requireNonNull(type, "type");
        this.weight = Objects.requireNonNull(weight, "weight");
        this.colour = Objects.requireNonNull(colour, "colour");
        setEditable(false);
        setFocusable(false);
        setOpaque(false);
        setLineWrap(true);
        setWrapStyleWord(true);
        setBorder(null);
        getAccessibleContext().setAccessibleName(text);
        dress();
        double natural = type.width(text, weight) + 1;
        setSize(Look.pixels(Math.min(natural, MEASURE * type.size())), 1);
    }

    private void dress() {
        if (getCaret() instanceof DefaultCaret caret) { // else each new text scrolls what it stands in
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        }
        if (type != null) { // Swing asks for its look before the fields are set
            setFont(type.font(weight));
            setForeground(colour.colour());
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        setOpaque(false);
        setBorder(null);
        dress();
    }

    /** Its height follows from its width, so a new width asks for a new layout. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean wider = width != getWidth();
        super.setBounds(x, y, width, height);
        if (wider) {
            revalidate();
        }
    }

    /** As high as its lines at the width it has; Swing's own answer fails while it is lower than its border. */
    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        Insets insets = getInsets();
        View lines = getUI().getRootView(this);
        lines.setSize(Math.max(1, getWidth() - insets.left - insets.right), Short.MAX_VALUE);
        int height = (int) Math.ceil(lines.getPreferredSpan(View.Y_AXIS));
        return new Dimension(getWidth(), height + insets.top + insets.bottom);
    }

    /** It can always be made narrower. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, getPreferredSize().height);
    }
}
