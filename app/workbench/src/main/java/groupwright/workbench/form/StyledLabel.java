package groupwright.workbench.form;

import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import javax.swing.JLabel;

/** A label in one of the sizes and colours of the look, also after the theme has changed. */
final class StyledLabel extends JLabel {
    private static final long serialVersionUID = 1L;

    private final Type type;
    private final Weight weight;
    private final Token colour;
    private final boolean ready;

    StyledLabel(String text, Type type, Weight weight, Token colour) {
        super(text);
        this.type = type;
        this.weight = weight;
        this.colour = colour;
        this.ready = true;
        updateUI();
    }

    @Override
    public void updateUI() {
        super.updateUI();
        if (ready) { // the constructor above it calls this too early
            setFont(type.font(weight));
            setForeground(colour.colour());
        }
    }
}
