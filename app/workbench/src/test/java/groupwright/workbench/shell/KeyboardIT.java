package groupwright.workbench.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Claim;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Theme;
import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The same walk by keyboard alone: no mouse, no call into the window but to look. */
@NeedsDisplay
@Timeout(300) // seconds; a window that hangs must not hang the build
class KeyboardIT {
    @TempDir
    Path folder;

    private OpenWindow open;

    private void go(int stageKey, PlaceName place) {
        for (int i = 0; i < 4 && open.read(() -> open.shell().place().name()) != place; i++) {
            open.press(stageKey, KeyEvent.VK_CONTROL);
            open.settle();
        }
        assertEquals(place, open.read(() -> open.shell().place().name()));
        open.press(KeyEvent.VK_F6); // from wherever one was into rail or place; Tab finds the rest
    }

    @Test
    void theWholeWalk() {
        try (OpenWindow opened = OpenWindow.onSample(folder, Theme.LIGHT, Locale.ENGLISH)) {
            open = opened;
            nudgeACog();
            openWhatTheRippleNames();
            open.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
            open.await("undone", () -> open.shell().standing().undo().isEmpty());
            open.settle();
            addARequirement();
            approveAClaim();
            writeThePdfs();
            assertEquals(List.of(), open.read(open::problems));
            assertEquals(Optional.empty(), open.events().thrown());
        }
    }

    @Test
    void bikesAreReadAndEdited() {
        try (OpenWindow opened = OpenWindow.onSample(folder, Theme.DARK, Locale.ENGLISH)) {
            open = opened;
            go(KeyEvent.VK_2, PlaceName.BIKES);
            readTheChecksOfACell();
            lengthenAChainstay();
            open.press(KeyEvent.VK_Z, KeyEvent.VK_CONTROL);
            open.await("undone", () -> open.shell().standing().undo().isEmpty());
            open.settle();
            assertEquals(List.of(), open.read(open::problems));
            assertEquals(Optional.empty(), open.events().thrown());
        }
    }

    private void readTheChecksOfACell() {
        open.tabTo("bikes.matrix");
        open.press(KeyEvent.VK_DOWN);
        open.press(KeyEvent.VK_RIGHT);
        open.settle();
        open.press(KeyEvent.VK_ENTER);
        open.component("bikes.checks");
        open.settle();
        open.tabTo("bikes.check.Chain angle");
        open.press(KeyEvent.VK_ENTER);
        open.await("workings are shown", () -> open.shell().workings().shown().isPresent());
        open.settle();
        open.press(KeyEvent.VK_ESCAPE);
        open.settle();
        assertEquals("bikes.matrix", open.read(() -> open.focusNow().getName()), "one goes on walking");
    }

    private void lengthenAChainstay() {
        open.tabTo("bikes.list");
        open.press(KeyEvent.VK_ENTER);
        open.tabToSaying("Chainstay");
        open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        open.type("455");
        open.press(KeyEvent.VK_ENTER);
        open.await(
                "the chainstay is changed",
                () -> open.shell().ripple().sentence().contains("455"));
        open.settle();
    }

    private void nudgeACog() {
        go(KeyEvent.VK_2, PlaceName.CONCEPTS);
        open.tabTo("strip cogs C-002");
        open.press(KeyEvent.VK_END);
        open.press(KeyEvent.VK_UP);
        open.await("the cog is changed", () -> open.shell().ripple().sentence().contains("45 → 46"));
        open.settle();
        assertEquals("strip cogs C-002", open.read(() -> open.focusNow().getName()), "one goes on nudging");
    }

    private void openWhatTheRippleNames() {
        open.tabTo("ripple.item.0");
        open.press(KeyEvent.VK_ENTER);
        open.await("requirements are shown", () -> open.shell().place().name() == PlaceName.REQUIREMENTS);
        open.settle();
        open.await("workings are shown", () -> open.shell().workings().shown().isPresent());
    }

    private void addARequirement() {
        int count = open.read(() -> open.shell().definition().count(RecordKinds.REQUIREMENT));
        go(KeyEvent.VK_1, PlaceName.REQUIREMENTS);
        open.tabTo("requirements.add");
        open.press(KeyEvent.VK_SPACE);
        open.tabToSaying("Kind");
        open.press(KeyEvent.VK_DOWN);
        open.tabToSaying("Title");
        open.type("quiet at the door");
        open.tabToSaying("Statement");
        open.type("the freehub shall stay quiet");
        open.tabToSaying("Verification");
        open.press(KeyEvent.VK_DOWN);
        open.tabToSaying("Weight");
        open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        open.type("1o");
        open.tabTo("form.add");
        open.press(KeyEvent.VK_SPACE);
        open.saying("Not a whole number: “1o”");
        open.tabToSaying("Weight");
        open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        open.type("6");
        open.tabTo("form.add");
        open.press(KeyEvent.VK_SPACE);
        open.await("it is added", () -> open.shell().definition().count(RecordKinds.REQUIREMENT) == count + 1);
        open.settle();
    }

    private Claim claim() {
        return open.shell().definition().get(Sample.id("K-009"), Claim.class).orElseThrow();
    }

    private void approveAClaim() {
        open.press(KeyEvent.VK_F, KeyEvent.VK_CONTROL);
        open.await("one can find", () -> open.focusNow() == open.shell().find());
        open.type("k9");
        open.press(KeyEvent.VK_ENTER);
        open.await("claims are shown", () -> open.shell().place().name() == PlaceName.CLAIMS);
        open.settle();
        open.tabTo("claims.withdraw");
        open.press(KeyEvent.VK_ENTER);
        answer("to be seen again");
        open.await("it is taken back", () -> claim().state() == Claim.State.WITHDRAWN);
        open.settle();
        open.tabTo("claims.propose");
        open.press(KeyEvent.VK_ENTER);
        open.await("it is proposed", () -> claim().state() == Claim.State.PROPOSED);
        open.settle();
        open.tabTo("claims.approve");
        open.press(KeyEvent.VK_ENTER);
        answer("marketing lead");
        open.await("it is approved", () -> claim().state() == Claim.State.APPROVED);
        open.settle();
    }

    private void answer(String text) {
        open.component("claims.now");
        open.await("a line asks", () -> open.focusNow() instanceof JTextField);
        open.press(KeyEvent.VK_A, KeyEvent.VK_CONTROL);
        open.type(text);
        open.press(KeyEvent.VK_ENTER);
    }

    private void writeThePdfs() {
        go(KeyEvent.VK_4, PlaceName.DOCUMENTS);
        open.tabTo("documents.write");
        open.press(KeyEvent.VK_SPACE);
        Path project = open.read(() -> open.shell().standing().folder());
        Path out = project.resolveSibling(project.getFileName() + "-documents");
        open.await("the documents are written", () -> Files.exists(out.resolve("claims.pdf")));
        assertTrue(Files.exists(out.resolve("specification.pdf")));
        open.settle();
    }
}
