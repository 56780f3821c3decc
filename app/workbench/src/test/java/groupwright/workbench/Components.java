package groupwright.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds and uses components by what people and screen readers know of them. */
public final class Components {
    private Components() {}

    /** All components inside, outer ones first. */
    public static List<Component> all(Container container) {
        List<Component> found = new ArrayList<>();
        for (Component child : container.getComponents()) {
            found.add(child);
            if (child instanceof Container inner) {
                found.addAll(all(inner));
            }
        }
        return found;
    }

    /** The accessible names inside. */
    public static List<String> names(Container container) {
        return all(container).stream()
                .filter(child -> child.getAccessibleContext() != null)
                .map(child -> child.getAccessibleContext().getAccessibleName())
                .filter(name -> name != null)
                .toList();
    }

    /** The component with a name. */
    public static Optional<Component> named(Container container, String name) {
        return all(container).stream()
                .filter(child -> name.equals(child.getName()))
                .findFirst();
    }

    /** Clicks a component at its upper left corner, without a display. */
    public static void click(Component component) {
        send(component, MouseEvent.MOUSE_PRESSED, InputEvent.BUTTON1_DOWN_MASK);
        send(component, MouseEvent.MOUSE_RELEASED, 0);
        send(component, MouseEvent.MOUSE_CLICKED, 0);
    }

    private static void send(Component component, int id, int modifiers) {
        component.dispatchEvent(new MouseEvent(component, id, 0, modifiers, 3, 3, 1, false, MouseEvent.BUTTON1));
    }
}
