package groupwright.workbench.shell;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.util.Optional;
import javax.swing.SwingUtilities;

/**
 * Keeps the focus where somebody works while a place shows something new: parts that are put back, or made anew under the
 * same name, get it again.
 */
final class FocusKeeper {
    private final Container place;
    private final Optional<Component> focused;

    /** Remembers what has the focus inside a place. */
    FocusKeeper(Container place) {
        this.place = place;
        this.focused = Optional.ofNullable(
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .filter(component -> SwingUtilities.isDescendingFrom(component, place));
    }

    /** Whether the focus was inside. */
    boolean isInside() {
        return focused.isPresent();
    }

    /** Gives it back where it was lost, or does something else where nothing is left that could take it. */
    void restoreOr(Runnable other) {
        if (focused.isPresent()) {
            focused.flatMap(this::now).ifPresentOrElse(Component::requestFocusInWindow, other);
        }
    }

    /** Gives it back where it was lost. */
    void restore() {
        focused.flatMap(this::now).ifPresent(Component::requestFocusInWindow);
    }

    private Optional<Component> now(Component before) {
        if (before.isShowing() && before.isFocusable() && SwingUtilities.isDescendingFrom(before, place)) {
            return Optional.of(before);
        }
        return before.getName() == null ? Optional.empty() : named(place, before.getName());
    }

    private static Optional<Component> named(Container container, String name) {
        for (Component child : container.getComponents()) {
            if (name.equals(child.getName()) && child.isShowing()) {
                return Optional.of(child);
            }
            Optional<Component> inner = child instanceof Container deeper ? named(deeper, name) : Optional.empty();
            if (inner.isPresent()) {
                return inner;
            }
        }
        return Optional.empty();
    }
}
