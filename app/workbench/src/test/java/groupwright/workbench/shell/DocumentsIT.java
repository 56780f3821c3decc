package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.project.ProjectDocuments;
import groupwright.workbench.Picture;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Theme;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Templates of documents, changed in the window by keyboard and on disk by others. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class DocumentsIT {
    @TempDir
    Path folder;

    private static JTextComponent text(OpenWindow open) {
        return (JTextComponent) open.component("documents.template");
    }

    private static Path template(OpenWindow open) {
        return open.read(() -> open.shell().standing().folder()).resolve("templates/brief.md");
    }

    /** From the second heading of the brief to its template, which is copied. */
    private static void copyTheBrief(OpenWindow open) {
        open.act(() -> open.shell().go(PlaceName.DOCUMENTS));
        open.settle();
        JComponent pages = (JComponent) open.component("pages");
        open.act(pages::requestFocusInWindow);
        open.await("the pages have the focus", pages::isFocusOwner);
        open.press(KeyEvent.VK_DOWN);
        open.press(KeyEvent.VK_DOWN);
        open.press(KeyEvent.VK_ENTER);
        JTextComponent text = text(open);
        open.await("the template has the focus", text::isFocusOwner);
        open.tabTo("documents.copy");
        open.press(KeyEvent.VK_SPACE);
        open.await("it can be changed", text::isEditable);
        open.act(text::requestFocusInWindow);
        open.await("the template has the focus again", text::isFocusOwner);
    }

    @ParameterizedTest
    @CsvSource({"LIGHT, 1280", "DARK, 1440"})
    void fromAHeadingOverAProblemToAnotherPage(Theme theme, int width) throws IOException {
        try (OpenWindow open = OpenWindow.onSample(folder, theme, width, 860);
                DiskWatch disk = new DiskWatch(folder)) {
            copyTheBrief(open);
            JTextComponent text = text(open);
            Picture.keep(open.picture(), "documents-copy-" + theme);
            String before = open.read(text::getText);
            int caret = open.read(text::getCaretPosition);
            assertTrue(before.startsWith("# What they said", caret), before.substring(caret, caret + 20));

            open.act(() -> text.setText("{{ gear-rage lead }}\n\n" + before));
            assertFalse(Files.readString(template(open)).contains("gear-rage"));
            open.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
            open.component("documents.obstacle.1");
            Picture.keep(open.picture(), "documents-problem-" + theme);
            open.click("documents.side.PAGE");
            open.component("documents.refused");
            Picture.keep(open.picture(), "documents-refused-" + theme);
            open.click("documents.obstacle.1");
            open.await(
                    "the editor has the focus at the line", () -> text.isFocusOwner() && text.getCaretPosition() < 21);

            open.act(() -> text.setText(before.replace("# What they said", "# What riders said")));
            Picture.keep(open.picture(), "documents-unsaved-" + theme);
            open.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
            open.component("documents.back");
            open.settle(); // the page is made anew
            assertTrue(Files.readString(template(open)).contains("# What riders said"));
            open.act(() -> text.setCaretPosition(text.getText().indexOf("# What riders said") + 20));
            open.press(KeyEvent.VK_ENTER, KeyEvent.VK_CONTROL);
            open.await("the page follows", () -> accessibleName(open).endsWith("What riders said"));
            Picture.keep(open.picture(), "documents-page-" + theme);
            assertEquals(List.of(), disk.end().onTheEventThread());
            assertEquals(Optional.empty(), open.events().thrown());
            assertEquals(List.of(), open.read(open::problems));
        }
    }

    private static String accessibleName(OpenWindow open) {
        return groupwright.workbench.Components.named(open.window(), "pages")
                .map(pages -> pages.getAccessibleContext().getAccessibleName())
                .orElse("");
    }

    @Test
    void othersChangedItMeanwhileAndTheNextStartRemembers() throws IOException {
        try (OpenWindow open = OpenWindow.onSample(folder, Theme.LIGHT, Locale.ENGLISH)) {
            copyTheBrief(open);
            open.type("mine ");
            Files.writeString(template(open), "theirs");
            open.press(KeyEvent.VK_S, KeyEvent.VK_CONTROL);
            open.component("documents.keepMine");
            Picture.keep(open.picture(), "documents-conflict");
            assertEquals("theirs", Files.readString(template(open)));
            open.act(() -> open.shell().go(PlaceName.RIDERS));
        }
        try (OpenWindow open = OpenWindow.onSample(folder, Theme.LIGHT, Locale.ENGLISH)) {
            open.act(() -> open.shell().go(PlaceName.DOCUMENTS));
            open.settle();
            open.click("documents.side.TEMPLATE");
            assertTrue(open.read(text(open)::getText).contains("mine # What they said"));
            open.click("documents.keepMine");
            open.component("documents.back");
            assertTrue(Files.readString(template(open)).contains("mine # What they said"));
        }
    }

    @Test
    void aNewTemplateByKeyboard() {
        try (OpenWindow open = OpenWindow.onSample(folder, Theme.DARK, 1280, 800)) {
            open.act(() -> open.shell().go(PlaceName.DOCUMENTS));
            open.settle();
            open.tabTo("documents.add");
            open.press(KeyEvent.VK_SPACE);
            JTextComponent name = (JTextComponent) open.component("documents.newName");
            open.await("the name has the focus", name::isFocusOwner);
            open.type("Plan");
            open.press(KeyEvent.VK_ENTER);
            open.component("documents.newName.refusal");
            Picture.keep(open.picture(), "documents-add-wrong");
            open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
            open.type("plan");
            open.press(KeyEvent.VK_ENTER);
            JTextComponent text = text(open);
            open.await("the new template is shown", () -> text.getText().contains("gear-range lead"));
            open.settle();
            Picture.keep(open.picture(), "documents-added");
            open.click("documents.write");
            open.saying(ProjectDocuments.names().size() + 1 + " files written");
            Picture.keep(open.picture(), "documents-written");
        }
    }
}
