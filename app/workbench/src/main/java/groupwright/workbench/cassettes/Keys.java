package groupwright.workbench.cassettes;

import java.awt.event.ActionEvent;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** Keys of components of this place. */
final class Keys {
    private Keys() {}

    /** What a key does while a component or one within it has the focus. */
    static void bind(JComponent component, String key, Runnable done) {
        component.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(key), key);
        component.getActionMap().put(key, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                done.run();
            }
        });
    }
}
