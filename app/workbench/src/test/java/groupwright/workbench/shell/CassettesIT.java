package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Concept;
import groupwright.workbench.Picture;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Theme;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.swing.JTable;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From limits to a cassette that is set in the lead concept, by keys, in the real window. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class CassettesIT {
    @TempDir
    Path folder;

    /** Event thread. */
    private static List<Integer> cogs(OpenWindow open) {
        return open.shell()
                .definition()
                .get(Sample.id("C-002"), Concept.class)
                .orElseThrow()
                .cogs();
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1440, 900", "DARK, 1280, 800"})
    void findSetAndUndo(Theme theme, int width, int height) {
        try (OpenWindow open = OpenWindow.onSample(folder, theme, width, height)) {
            open.act(() -> open.shell().go(PlaceName.CASSETTES));
            open.settle();
            Picture.keep(open.picture(), "cassettes-empty-" + theme + width);
            open.tabTo("find cassettes");
            open.press(KeyEvent.VK_SPACE);
            JTable table = (JTable) open.component("cassettes");
            open.await("cassettes are listed", () -> table.getRowCount() > 100);
            open.await("the list has room", () -> table.getVisibleRect().height >= 100);
            Picture.keep(open.picture(), "cassettes-found-" + theme + width);
            open.tabTo("cassettes");
            open.press(KeyEvent.VK_DOWN);
            open.press(KeyEvent.VK_P);
            Picture.keep(open.picture(), "cassettes-pinned-" + theme + width);
            List<Integer> before = open.read(() -> cogs(open));
            open.tabTo("set");
            open.press(KeyEvent.VK_SPACE);
            open.await("another cassette is set", () -> !cogs(open).equals(before));
            open.settle();
            assertTrue(open.foot().contains("C-002"), open.foot());
            Picture.keep(open.picture(), "cassettes-set-" + theme + width);
            open.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
            open.await("it is undone", () -> cogs(open).equals(before));
            assertEquals(Optional.empty(), open.events().thrown());
            assertEquals(List.of(), open.read(open::problems));
        }
    }
}
