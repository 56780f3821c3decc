package groupwright.workbench.shell;

import groupwright.workbench.bench.Stage;
import groupwright.workbench.components.ActionLink;
import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Toolkit;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;

/** The shortcuts of the window in one table. */
final class Keys {
    private final Shell shell;
    private final Content content;

    Keys(Shell shell, Content content) {
        this.shell = shell;
        this.content = content;
    }

    void install() {
        int command = Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx();
        on(KeyEvent.VK_F, command, () -> {
            shell.find().requestFocusInWindow();
            shell.find().selectAll();
        });
        on(KeyEvent.VK_Z, command, shell::undo);
        on(KeyEvent.VK_Y, command, shell::redo);
        on(KeyEvent.VK_Z, command | InputEvent.SHIFT_DOWN_MASK, shell::redo);
        on(KeyEvent.VK_F6, 0, () -> nextPart(1));
        on(KeyEvent.VK_F6, InputEvent.SHIFT_DOWN_MASK, () -> nextPart(-1));
        on(KeyEvent.VK_F9, 0, content::toggleWorkings);
        on(KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK, () -> shell.walk(-1));
        on(KeyEvent.VK_RIGHT, InputEvent.ALT_DOWN_MASK, () -> shell.walk(1));
        Stage[] stages = Stage.values();
        for (int i = 0; i < stages.length; i++) {
            Stage stage = stages[i];
            on(KeyEvent.VK_1 + i, command, () -> shell.go(stage));
        }
        for (int i = 0; i < 9; i++) {
            int index = i;
            on(KeyEvent.VK_1 + i, InputEvent.ALT_DOWN_MASK, () -> lead(index));
        }
    }

    private void on(int key, int modifiers, Runnable action) {
        String name = key + "/" + modifiers;
        content.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
                .put(KeyStroke.getKeyStroke(key, modifiers), name);
        content.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(KeyStroke.getKeyStroke(key, modifiers), name);
        content.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    private void lead(int index) {
        List<groupwright.definition.record.Concept> shown = TopBar.shown(shell.definition());
        if (index < shown.size()) {
            shell.lead(shown.get(index).id());
        }
    }

    /** Walks through rail, place, workings and ripple line. */
    private void nextPart(int by) {
        List<Container> parts = List.of(shell.rail(), shell.place().component(), shell.workings(), shell.ripple());
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        int at = -1;
        for (int i = 0; i < parts.size(); i++) {
            at = focus != null && SwingUtilities.isDescendingFrom(focus, parts.get(i)) ? i : at;
        }
        for (int step = 1; step <= parts.size(); step++) {
            int next = Math.floorMod(at + by * step + (at < 0 && by < 0 ? 1 : 0), parts.size());
            if (enter(parts.get(next))) {
                return;
            }
        }
    }

    private boolean enter(Container part) {
        if (part == shell.rail()) {
            shell.rail().enter();
            return true;
        }
        Optional<Component> first = firstFocusable(part);
        first.ifPresent(Component::requestFocusInWindow);
        return first.isPresent();
    }

    private static Optional<Component> firstFocusable(Container part) {
        for (Component child : part.getComponents()) {
            boolean text = child instanceof JTextComponent field && !field.isEditable();
            if (child.isShowing() && child.isEnabled() && child.isFocusable() && !text && acts(child)) {
                return Optional.of(child);
            }
            if (child instanceof Container inner && child.isShowing()) {
                Optional<Component> found = firstFocusable(inner);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }

    /** Panels can be focused in Swing but do nothing there. */
    private static boolean acts(Component child) {
        return child instanceof ActionLink
                || child instanceof javax.swing.AbstractButton
                || child instanceof javax.swing.JTable
                || child instanceof JTextComponent
                || child instanceof groupwright.workbench.components.PaintedView<?>;
    }
}
