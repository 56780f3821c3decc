package groupwright.workbench.riders;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import javax.swing.AbstractAction;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;

/** A field that is a plain text of a table until it has the focus. */
final class ValueField extends JTextField {
    private static final long serialVersionUID = 1L;

    private final RidersSheet.Kind kind;
    private boolean wrong;

    /**
     * @param done runs when what was typed is meant to hold
     * @param back runs when it is taken back
     */
    ValueField(RidersSheet.Kind kind, Runnable done, Runnable back) {
        this.kind = kind;
        setOpaque(false);
        setFont(Type.TABLE.font(Weight.REGULAR));
        if (kind == RidersSheet.Kind.NUMBER) {
            setHorizontalAlignment(SwingConstants.TRAILING);
        }
        bind("ENTER", done);
        bind("ESCAPE", back);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                selectAll();
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    done.run();
                }
                repaint();
            }
        });
    }

    private void bind(String key, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(key), key);
        getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    /** What the arrow keys up and down lead to. */
    void neighbours(Runnable up, Runnable down) {
        bind("UP", up);
        bind("DOWN", down);
    }

    /** What is typed is refused. */
    void markWrong() {
        wrong = true;
        repaint();
    }

    void markRight() {
        wrong = false;
        repaint();
    }

    private boolean isOpen() {
        return isFocusOwner() || wrong;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, Metric.CLOSE_ROW.px());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (isOpen()) {
            super.paintComponent(graphics);
            return;
        }
        Insets insets = getInsets();
        Rectangle room = new Rectangle(insets.left, 0, getWidth() - insets.left - insets.right, getHeight());
        try (Drawing drawing = Drawing.on(graphics, room)) {
            double baseline = Type.TABLE.baseline(drawing.height() / 2);
            String text = Type.TABLE.cut(shown(), Weight.REGULAR, drawing.width() + 1);
            if (kind == RidersSheet.Kind.NUMBER) {
                drawing.textUpTo(text, drawing.width(), baseline, Type.TABLE, Weight.REGULAR, Token.INK);
            } else {
                drawing.text(text, 0, baseline, Type.TABLE, Weight.REGULAR, Token.INK);
            }
        }
    }

    @Override
    protected void paintBorder(Graphics graphics) {
        if (isOpen()) {
            super.paintBorder(graphics);
        }
        if (wrong) {
            double inset = 2;
            try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
                drawing.box(inset, drawing.height() - 2 * inset, drawing.width() - 2 * inset, inset, Token.MISSES);
            }
        }
    }

    /** At rest the band of a number stands behind its unit. */
    private String shown() {
        int band = kind == RidersSheet.Kind.NUMBER ? getText().indexOf(LineReading.BAND) : -1;
        return band < 0 ? getText() : getText().substring(0, band).strip();
    }

    /** Width of its insets, so that neighbours line up with its text. */
    int inset() {
        return Math.max(getInsets().right, Look.pixels(1));
    }
}
