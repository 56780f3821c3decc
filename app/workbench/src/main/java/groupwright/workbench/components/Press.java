package groupwright.workbench.components;

import java.awt.Cursor;
import java.awt.event.ActionEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.border.CompoundBorder;

/** Makes a component do something on a click, Enter or Space, and shows that it has the focus. */
final class Press {
    static final String ACTION = "press";

    private Press() {}

    static void install(JComponent component, Runnable pressed) {
        component.setFocusable(true);
        component.setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        component.setBorder(
                component.getBorder() == null
                        ? new FocusBorder()
                        : new CompoundBorder(new FocusBorder(), component.getBorder()));
        bind(component, "ENTER", ACTION, pressed);
        bind(component, "SPACE", ACTION, pressed);
        component.addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                component.requestFocusInWindow();
            }

            @Override
            public void mouseClicked(MouseEvent event) {
                if (SwingUtilities.isLeftMouseButton(event) && component.isEnabled()) {
                    pressed.run();
                }
            }
        });
        repaintOnFocus(component);
    }

    static void repaintOnFocus(JComponent component) {
        component.addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                component.repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                component.repaint();
            }
        });
    }

    /**
     * Binds a key of a component that has the focus.
     *
     * @param key as {@link KeyStroke#getKeyStroke(String)} reads it
     */
    static void bind(JComponent component, String key, String name, Runnable done) {
        component.getInputMap().put(KeyStroke.getKeyStroke(key), name);
        component.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                if (component.isEnabled()) {
                    done.run();
                }
            }
        });
    }

    /** Copying has the key of each system. */
    static void bindCopy(JComponent component, Runnable copied) {
        for (int modifier : new int[] {KeyEvent.CTRL_DOWN_MASK, KeyEvent.META_DOWN_MASK}) {
            component.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_C, modifier), "copy");
        }
        component.getActionMap().put("copy", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                copied.run();
            }
        });
    }
}
