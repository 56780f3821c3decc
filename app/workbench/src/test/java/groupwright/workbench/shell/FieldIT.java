package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.workbench.Picture;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Theme;
import java.awt.Component;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is typed wrongly into the window is said where it was typed. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class FieldIT {
    private static final Address POWER = Address.parse("G-002.powerHour_W").orElseThrow();

    @TempDir
    Path folder;

    @Test
    void lettersInANumberAreSaidBelowIt() {
        try (OpenWindow open = OpenWindow.onSample(folder, Theme.LIGHT, Locale.ENGLISH)) {
            open.act(() -> open.shell().go(PlaceName.RIDERS));
            open.settle();
            JTextComponent field = (JTextComponent) open.component("riders." + POWER);
            open.act(field::requestFocusInWindow);
            open.await("the field has the focus", field::isFocusOwner);
            open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
            open.type("19o");
            open.press(KeyEvent.VK_ENTER);
            Component sentence = open.component("riders.refusal." + POWER);
            Picture.keep(open.picture(), "field-wrong");
            assertTrue(open.read(
                    () -> sentence.getAccessibleContext().getAccessibleName().contains("19o")
                            || ((JTextComponent) sentence).getText().contains("19o")));
            assertTrue(open.read(() -> isWhollyInSight(sentence)), "the whole sentence is to be seen");
            assertEquals(
                    Optional.of(Amount.of(190)),
                    open.read(() -> open.shell().definition().value(POWER)));
            open.act(field::requestFocusInWindow);
            open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
            open.type("195,5");
            open.press(KeyEvent.VK_ENTER);
            open.await(
                    "the comma is read",
                    () -> open.shell().definition().value(POWER).equals(Optional.of(Amount.of(195.5))));
        }
    }

    private static boolean isWhollyInSight(Component component) {
        Rectangle seen = ((javax.swing.JComponent) component).getVisibleRect();
        return component.getHeight() > Metric.GAP.px()
                && component.getHeight() >= component.getPreferredSize().height
                && seen.height >= component.getHeight();
    }
}
