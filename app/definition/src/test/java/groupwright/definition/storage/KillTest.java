package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills real writers at random while a reader looks on; each writer goes on where the one before was killed. */
class KillTest {
    private static final int KILLS = Integer.getInteger("groupwright.kills", 20);
    private static final long SEED = 20_240_607;
    private static final int MOST_DELAY_MS = 120;

    @TempDir
    private Path root;

    private int reads;

    @Test
    void aKilledWriterLeavesEveryEditWholeOrAbsent() throws Exception {
        Random random = new Random(SEED);
        Project.write(root, NumberedEdits.state(0));
        int number = 0;
        for (int kill = 1; kill <= KILLS; kill++) {
            int delay = random.nextInt(MOST_DELAY_MS);
            String message = "seed " + SEED + ", kill " + kill + " after " + delay + " ms";
            int acknowledged = killedAfter(delay, number, message);
            number = numberRead(message);
            assertTrue(
                    number == acknowledged || number == acknowledged + 1,
                    message + ": " + acknowledged + " acknowledged, " + number + " found");
            checkRecovery(number, message);
        }
        assertTrue(number > KILLS, "the writers got something done: " + number);
        assertTrue(reads > KILLS, "the reader got to see something: " + reads);
    }

    /** The last edit that the writer said it had saved. */
    private int killedAfter(int delay, int before, String message) throws IOException, InterruptedException {
        try (ChildProcess writer = ChildProcess.start(NumberedEdits.class, root.toString())) {
            int acknowledged = Integer.parseInt(writer.line());
            assertEquals(before + 1, acknowledged, message);
            long end = System.nanoTime() + delay * 1_000_000L;
            while (System.nanoTime() < end) {
                numberRead(message);
                reads++;
            }
            writer.kill();
            List<String> rest = writer.remainingLines().toList();
            return rest.isEmpty() ? acknowledged : Integer.parseInt(rest.get(rest.size() - 1));
        }
    }

    /** Reads without lock; whatever is read must be the project after one edit, and no other. */
    private int numberRead(String message) {
        Snapshot snapshot = ProjectFolder.at(root, Project.FOLDERS).read();
        assertEquals(List.of(), Project.sentences(snapshot), message);
        SortedMap<String, String> texts = Project.texts(snapshot);
        int number = NumberedEdits.number(texts);
        assertEquals(NumberedEdits.state(number), texts, message);
        return number;
    }

    private void checkRecovery(int number, String message) throws IOException {
        try (ProjectWriter writer = Project.open(root, new RealDisk())) {
            assertEquals(NumberedEdits.state(number), Project.texts(writer.read()), message);
            assertEquals(List.of("lock"), Project.ownNames(root), message);
        }
    }
}
