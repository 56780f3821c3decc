package groupwright.workbench.shell;

import groupwright.workbench.Components;
import groupwright.workbench.Sample;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.start.DataFolder;
import groupwright.workbench.start.Preferences;
import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.Window;
import java.awt.event.AWTEventListener;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.accessibility.AccessibleContext;
import javax.swing.AbstractButton;
import org.junit.jupiter.api.Assertions;

/** The real window on the copy of the sample in a folder of the test, driven as a user drives it. */
final class OpenWindow implements AutoCloseable {
    private static final long PATIENCE_MS = 20_000;
    private static final int KEY_DELAY_MS = 20;
    private static final int HEARD_MS = 1000;
    private static final int MOST_TABS = 200;

    private final EventThread events = EventThread.watched();
    private final Robot robot;
    private final AtomicInteger released = new AtomicInteger();
    private final AWTEventListener keys = event -> {
        if (event.getID() == KeyEvent.KEY_RELEASED) {
            released.incrementAndGet();
        }
    };
    private final MainWindow window;

    private OpenWindow(Path data, Theme theme, Locale locale, Optional<Path> project, int width, int height) {
        try {
            robot = new Robot();
        } catch (AWTException noDisplay) {
            throw new IllegalStateException(noDisplay);
        }
        robot.setAutoDelay(KEY_DELAY_MS);
        Toolkit.getDefaultToolkit().addAWTEventListener(keys, AWTEvent.KEY_EVENT_MASK);
        Locale.setDefault(locale);
        Preferences preferences =
                Preferences.USUAL.with(theme == Theme.DARK ? Preferences.Dark.YES : Preferences.Dark.NO);
        window = EventThread.on(() -> {
            Look.setUp(theme, 1);
            MainWindow made = new MainWindow(
                    new Surrounding(
                            new DataFolder(data), preferences, Optional.of(Sample.FOLDER.toAbsolutePath()), locale),
                    () -> {});
            made.start(Opener.begin(made.surrounding(), project));
            made.setBounds(0, 0, width, height);
            return made;
        });
        await("the project is open", () -> window.shell().isPresent());
        settle();
    }

    /** Opens the sample. */
    static OpenWindow onSample(Path data, Theme theme, Locale locale) {
        return new OpenWindow(data, theme, locale, Optional.empty(), 1440, 900);
    }

    /** Opens the sample in a window of another size. */
    static OpenWindow onSample(Path data, Theme theme, int width, int height) {
        return new OpenWindow(data, theme, Locale.ENGLISH, Optional.empty(), width, height);
    }

    /** Opens a project. */
    static OpenWindow on(Path project, Path data) {
        return new OpenWindow(data, Theme.LIGHT, Locale.ENGLISH, Optional.of(project), 1440, 900);
    }

    Shell shell() {
        return window.shell().orElseThrow();
    }

    MainWindow window() {
        return window;
    }

    EventThread events() {
        return events;
    }

    /** Reads something on the event thread. */
    <T> T read(Supplier<T> reading) {
        return EventThread.on(reading);
    }

    /** Does something on the event thread. */
    void act(Runnable action) {
        EventThread.on(() -> {
            action.run();
            return true;
        });
    }

    /** Waits until something is so. */
    void await(String what, BooleanSupplier condition) {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!EventThread.on(condition::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                Assertions.fail("waited in vain until " + what + "; the foot says: "
                        + EventThread.on(() -> window.shell()
                                .map(shell -> shell.ripple().sentence())
                                .orElse("–"))
                        + "; problems: " + EventThread.on(this::problems));
            }
            try {
                Thread.sleep(20);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
                throw new IllegalStateException(interrupted);
            }
        }
    }

    /** Waits until the ledger's thread has done all it was asked, and what it told is shown. */
    void settle() {
        for (int i = 0; i < 3; i++) { // what is shown may ask for more
            boolean[] done = {false};
            act(() -> shell().desk().ask(view -> true, any -> done[0] = true));
            await("the ledger is done", () -> done[0]);
        }
        act(() -> {});
    }

    /** The problems told, by their sentences. */
    List<String> problems() {
        return Components.named(window, "problems").stream()
                .filter(Component::isVisible)
                .flatMap(panel -> Components.names((java.awt.Container) panel).stream())
                .toList();
    }

    /** What the foot of the window says. */
    String foot() {
        return read(() -> shell().ripple().sentence());
    }

    /** The component with a name that is in sight. */
    Component component(String name) {
        await("there is " + name, () -> find(name).isPresent());
        return read(() -> find(name).orElseThrow());
    }

    private Optional<Component> find(String name) {
        return Components.all(window).stream()
                .filter(child -> name.equals(child.getName()) && child.isShowing())
                .findFirst();
    }

    /** The component whose accessible name holds a text and that is in sight. */
    Component saying(String text) {
        await("something says " + text, () -> findSaying(text).isPresent());
        return read(() -> findSaying(text).orElseThrow());
    }

    private static boolean says(Component component, String text) {
        AccessibleContext context = component.getAccessibleContext();
        return context != null
                && (context.getAccessibleName() != null
                                && context.getAccessibleName().contains(text)
                        || context.getAccessibleDescription() != null
                                && context.getAccessibleDescription().contains(text));
    }

    private Optional<Component> findSaying(String text) {
        for (Window open : Window.getWindows()) {
            Optional<Component> found = Components.all(open).stream()
                    .filter(Component::isShowing)
                    .filter(child -> says(child, text))
                    .reduce((outer, inner) -> inner);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Clicks the component with a name; found and clicked at once, because what is shown may be made anew meanwhile. */
    void click(String name) {
        await("there is " + name, () -> find(name).isPresent());
        act(() -> click(find(name).orElseThrow()));
    }

    /** Clicks the component that says something. */
    void clickSaying(String text) {
        await("something says " + text, () -> findSaying(text).isPresent());
        act(() -> click(findSaying(text).orElseThrow()));
    }

    private static void click(Component component) {
        if (component instanceof AbstractButton button) {
            button.doClick();
        } else {
            Components.click(component);
        }
    }

    /** Presses a key with others held once something has the focus to hear it, and waits a while until it is heard. */
    void press(int key, int... held) {
        await("something has the focus", () -> focusNow() != null);
        int before = released.get();
        for (int one : held) {
            robot.keyPress(one);
        }
        robot.keyPress(key);
        robot.keyRelease(key);
        for (int i = held.length - 1; i >= 0; i--) {
            robot.keyRelease(held[i]);
        }
        long end = System.currentTimeMillis() + HEARD_MS;
        while (released.get() < before + 1 + held.length && System.currentTimeMillis() < end) {
            Thread.onSpinWait(); // a release may go to a window that closes; what was pressed shows in what it does
        }
        act(() -> {});
    }

    /** Types letters, digits and signs of a plain keyboard. */
    void type(String text) {
        for (char c : text.toCharArray()) {
            if (Character.isUpperCase(c)) {
                press(KeyEvent.getExtendedKeyCodeForChar(c), KeyEvent.VK_SHIFT);
            } else {
                press(KeyEvent.getExtendedKeyCodeForChar(c));
            }
        }
    }

    /** Presses Tab until something has the focus. */
    void tabTo(String what, java.util.function.Predicate<Component> there) {
        List<String> passed = new java.util.ArrayList<>();
        for (int i = 0; i < MOST_TABS; i++) {
            Component focus = read(this::focusNow);
            if (focus != null && read(() -> there.test(focus))) {
                return;
            }
            passed.add(read(() -> described(focus)));
            press(KeyEvent.VK_TAB);
        }
        Assertions.fail("Tab never reached " + what + "; it passed " + passed);
    }

    /** Presses Tab until the component with a name has the focus. */
    void tabTo(String name) {
        tabTo(name, component -> name.equals(component.getName()));
    }

    /** Presses Tab until the component with an accessible name has the focus. */
    void tabToSaying(String text) {
        tabTo(text, component -> text.equals(accessibleName(component)));
    }

    private static String accessibleName(Component component) {
        return component.getAccessibleContext() == null
                ? null
                : component.getAccessibleContext().getAccessibleName();
    }

    private static String described(Component focus) {
        return focus == null
                ? "nothing"
                : focus.getClass().getSimpleName() + " " + focus.getName() + " “" + accessibleName(focus) + "”";
    }

    /** What has the focus; on the event thread. */
    Component focusNow() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    /** The window as it looks now. */
    BufferedImage picture() {
        settle();
        return read(() -> {
            BufferedImage image = new BufferedImage(window.getWidth(), window.getHeight(), BufferedImage.TYPE_INT_RGB);
            window.paint(image.getGraphics());
            return image;
        });
    }

    /** Closes the window and says how the event thread did. */
    @Override
    public void close() {
        Toolkit.getDefaultToolkit().removeAWTEventListener(keys);
        System.err.println(events.report()); // the only place that tells how busy the event thread was
        boolean[] closed = {false};
        act(() -> {
            window.shell()
                    .ifPresentOrElse(
                            shell -> shell.desk().close(() -> {
                                shell.end();
                                window.dispose();
                                closed[0] = true;
                            }),
                            () -> closed[0] = true);
        });
        await("the window is closed", () -> closed[0]);
    }
}
