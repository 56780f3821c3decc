package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.workbench.Components;
import groupwright.workbench.Picture;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Theme;
import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every place at several sizes in both themes: nothing is thrown, and what does not fit says itself in a tip. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class PicturesIT {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "{0}, {1} × {2}")
    @CsvSource({"LIGHT, 1280, 800", "DARK, 1440, 900", "LIGHT, 2560, 1440", "LIGHT, 820, 600"})
    void everyPlace(Theme theme, int width, int height) {
        try (OpenWindow open = OpenWindow.onSample(folder, theme, width, height)) {
            List<String> cut = new ArrayList<>();
            for (PlaceName place : PlaceName.values()) {
                if (open.read(() -> open.shell().place(place).isPresent())) {
                    open.act(() -> open.shell().go(place));
                    open.settle();
                    Picture.keep(open.picture(), "place-" + place + "-" + theme + "-" + width);
                    cut.addAll(open.read(() -> cut(open, place)));
                }
            }
            assertEquals(List.of(), cut);
            assertEquals(Optional.empty(), open.events().thrown());
            assertEquals(List.of(), open.read(open::problems));
        }
    }

    /** Labels and buttons that are narrower than their text and have no tip that says it. */
    private static List<String> cut(OpenWindow open, PlaceName place) {
        List<String> cut = new ArrayList<>();
        for (Component child : Components.all(open.window())) {
            boolean text = child instanceof JLabel || child instanceof AbstractButton;
            if (text && child.isShowing() && child.getWidth() > 0) {
                JComponent label = (JComponent) child;
                boolean narrow = label.getWidth() < label.getPreferredSize().width - 1;
                String said = label instanceof JLabel words ? words.getText() : ((AbstractButton) label).getText();
                if (narrow && said != null && !said.isBlank() && label.getToolTipText() == null) {
                    cut.add(place + ": " + said);
                }
            }
        }
        return cut;
    }
}
