package groupwright.workbench.documents;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import javax.swing.text.BadLocationException;
import javax.swing.undo.CompoundEdit;
import javax.swing.undo.UndoManager;
import javax.swing.undo.UndoableEdit;

/**
 * The text of a template: letters of one width, broken to the room, the line one stands on behind a wash. Tab leaves it, as
 * it leaves every field; templates need no tabs.
 */
final class TemplateText extends JTextArea {
    private static final int MOST_STEPS = 2000;

    private final transient UndoManager steps = new UndoManager();
    private transient UndoableEdit target = steps;
    private boolean quiet;

    /**
     * @param typed told the whole text after each change
     * @param saved when it is to be saved
     * @param followed told the line, from 1, whose page is to be shown
     */
    TemplateText(Consumer<String> typed, Runnable saved, IntConsumer followed) {
        setName("documents.template");
        setLineWrap(true);
        setWrapStyleWord(true);
        setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.STEP.px(), Metric.STEP.px(), Metric.GAP.px()));
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        setFocusTraversalKeys(java.awt.KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        dress();
        steps.setLimit(MOST_STEPS);
        getDocument().addUndoableEditListener(event -> target.addEdit(event.getEdit()));
        getDocument().addDocumentListener(new Typing(typed));
        addCaretListener(event -> repaint());
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                getCaret().setVisible(true); // to be walked line by line even where it cannot be changed
            }
        });
        int command = InputEvent.CTRL_DOWN_MASK;
        key(KeyEvent.VK_S, command, saved);
        key(KeyEvent.VK_ENTER, command, () -> followed.accept(line()));
        key(KeyEvent.VK_Z, command, this::undo);
        key(KeyEvent.VK_Y, command, this::redo);
        key(KeyEvent.VK_Z, command | InputEvent.SHIFT_DOWN_MASK, this::redo);
    }

    private final class Typing implements DocumentListener {
        private final Consumer<String> typed;

        Typing(Consumer<String> typed) {
            this.typed = typed;
        }

        private void changed() {
            if (!quiet) {
                typed.accept(getText());
            }
        }

        @Override
        public void insertUpdate(DocumentEvent event) {
            changed();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            changed();
        }

        @Override
        public void changedUpdate(DocumentEvent event) {
            // attributes only, which plain text has none of
        }
    }

    private void key(int code, int modifiers, Runnable action) {
        KeyStroke stroke = KeyStroke.getKeyStroke(code, modifiers);
        String name = "template." + stroke;
        getInputMap().put(stroke, name);
        getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    private void undo() {
        if (steps.canUndo()) {
            steps.undo();
        }
    }

    private void redo() {
        if (steps.canRedo()) {
            steps.redo();
        }
    }

    /** Shows another text; what was typed in the one before can no longer be undone. */
    void open(String text) {
        load(text);
        steps.discardAllEdits();
        setCaretPosition(0);
    }

    /** Shows the text as it is on disk now; the line one stands on stays. */
    void load(String text) {
        int line = line();
        CompoundEdit whole = new CompoundEdit(); // taking out and putting in is one step
        quiet = true;
        target = whole;
        setText(text);
        target = steps;
        quiet = false;
        whole.end();
        steps.addEdit(whole);
        setCaretPosition(start(Math.min(line, getLineCount())));
    }

    /** The line of the caret, from 1. */
    int line() {
        return lineOf(getCaretPosition());
    }

    /** The line of a place in the text, from 1. */
    int lineOf(int offset) {
        return getDocument().getDefaultRootElement().getElementIndex(offset) + 1;
    }

    /** Where a line starts. */
    int start(int line) {
        return getDocument().getDefaultRootElement().getElement(line - 1).getStartOffset();
    }

    /** Goes to a place; lines and columns the text has no more count as its last. */
    void goTo(int line, int column) {
        int known = Math.max(1, Math.min(line, getLineCount()));
        int end = getDocument().getDefaultRootElement().getElement(known - 1).getEndOffset() - 1;
        setCaretPosition(Math.min(start(known) + column - 1, end));
        Rectangle at = area(known);
        at.grow(0, Math.max(0, getVisibleRect().height / 3)); // with what stands around it
        scrollRectToVisible(at);
        requestFocusInWindow();
    }

    /** The rows a line covers, over the whole width. */
    Rectangle area(int line) {
        try {
            Rectangle first = modelToView2D(start(line)).getBounds();
            int end = getDocument().getDefaultRootElement().getElement(line - 1).getEndOffset() - 1;
            Rectangle last = modelToView2D(end).getBounds();
            return new Rectangle(0, first.y, getWidth(), last.y + last.height - first.y);
        } catch (BadLocationException | NullPointerException unpainted) { // no size yet
            return new Rectangle();
        }
    }

    private void dress() {
        setFont(Type.TABLE.mono());
        setForeground(Token.INK.colour());
        setCaretColor(Token.INK.colour());
        setDisabledTextColor(Token.INK.colour());
        setOpaque(false);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Token.RAISED.colour());
        graphics.fillRect(0, 0, getWidth(), getHeight());
        try (Drawing drawing = Drawing.on(graphics, area(line()))) {
            if (drawing.height() > 0) {
                drawing.box(0, 0, drawing.width(), drawing.height(), Token.WASH);
                drawing.level(0, drawing.width(), drawing.height() - 1, 1, Token.ACCENT);
            }
        }
        super.paintComponent(graphics);
    }
}
