package groupwright.workbench.lists;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys of our own components while they have the focus. */
public final class Keys {
    private Keys() {}

    /** @param key as {@link KeyStroke#getKeyStroke(String)} reads it */
    public static void bind(JComponent component, String key, Runnable action) {
        bind(component, JComponent.WHEN_FOCUSED, key, action);
    }

    /** The same while anything inside the component has the focus. */
    public static void bindInside(JComponent component, String key, Runnable action) {
        bind(component, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, key, action);
    }

    private static void bind(JComponent component, int condition, String key, Runnable action) {
        component.getInputMap(condition).put(KeyStroke.getKeyStroke(key), "own " + key);
        component.getActionMap().put("own " + key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent pressed) {
                action.run();
            }
        });
    }
}
