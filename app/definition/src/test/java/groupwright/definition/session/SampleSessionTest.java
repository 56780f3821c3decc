package groupwright.definition.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.history.Ripple;
import groupwright.definition.ledger.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How much of the sample project one edit asks again. */
class SampleSessionTest {
    @TempDir
    private Path temp;

    private static Path sample() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("samples/tarnbeck"))) {
            here = here.getParent();
        }
        return here.resolve("samples/tarnbeck");
    }

    /**
     * The sample holds 605 answers. The cogs of C-002 stand behind 15 figures that are watched through verdicts and claims:
     * the cadence on five climbs, spin-out speed, largest step, phase mismatch, gear range, capacity margin, side travel,
     * longest wait, step unevenness, lowest metres per turn and distinct gears, and behind the chain angle on six bikes, each
     * with its band: 42 computations. Nine of the 15, and the chain angles, which name their gear, come out different for a
     * requirement, which asks the verdict on its criterion and its worst verdict: 20 more. Three claims rest on them: 65. On
     * six bikes the chain gets its links and its path anew, one with suspension at both ends of its travel, and with them the
     * guide-pulley gap and the verdict on it: 25 more, 90 in all. Spin-out, largest step and others come out equal, and what stands on them is not asked again.
     */
    @Test
    void oneCogAsksAgainOnlyWhatItTouches() throws IOException {
        Path folder = temp.resolve("tarnbeck");
        OpenProject.copy(sample(), folder);
        try (OpenProject open = OpenProject.at(folder)) {
            List<Integer> cogs = new ArrayList<>(List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 45));
            assertEquals(cogs, open.value("C-002.cogs"));
            assertEquals(605, ((Ledger) open.session.view()).size());
            cogs.set(10, 46);
            Step edited = open.set("C-002.cogs", cogs);
            assertTrue(edited.computations() <= 90, () -> edited.computations() + " computations");
            assertEquals(
                    List.of("verdict C-002 R-001", "verdict C-002 R-002"),
                    edited.ripple().effects().stream()
                            .map(effect -> effect.ask().toString())
                            .limit(2)
                            .toList());
            Step undone = open.session.undo().orElseThrow();
            assertTrue(undone.computations() <= 90, () -> undone.computations() + " computations");
            assertEquals(
                    edited.ripple().effects().stream()
                            .map(Ripple.Effect::before)
                            .toList(),
                    undone.ripple().effects().stream().map(Ripple.Effect::after).toList());
            open.assertSaved("undone");
        }
    }
}
