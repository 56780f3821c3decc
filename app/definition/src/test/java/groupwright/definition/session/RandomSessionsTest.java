package groupwright.definition.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.history.Conflict;
import groupwright.definition.interchange.Loading;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RandomEdits;
import groupwright.definition.record.RandomRecords;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Long sessions of random edits, alone and beside somebody with a plain editor. */
class RandomSessionsTest {
    @TempDir
    private Path temp;

    private static Step edit(OpenProject open, RandomEdits edits) {
        return open.session.edit(Optional.empty(), project -> known(edits.edit(project)));
    }

    /** In the format this program writes: a newer one is not to be edited. */
    private static Definition known(Definition definition) {
        return definition.project().format() == Loading.FORMAT
                ? definition
                : definition.with(OpenProject.at("project.format"), Optional.of(Loading.FORMAT));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void aloneTheFolderSaysWhatTheSessionSaysAndAllCanBeUndone(long seed) throws IOException {
        Random random = new Random(seed);
        RandomRecords records = new RandomRecords(random);
        RandomEdits edits = new RandomEdits(records);
        Definition start = known(records.project(20));
        try (OpenProject open = OpenProject.of(temp.resolve("alone"), start)) {
            OpenProject.assertSame(start, open.session.definition(), "opened, seed " + seed);
            for (int i = 0; i < 40; i++) {
                if (random.nextInt(5) == 0) {
                    open.session.undo();
                } else if (random.nextInt(8) == 0) {
                    open.session.redo();
                } else {
                    edit(open, edits);
                }
                open.assertSaved("seed " + seed + ", step " + i);
            }
            while (open.session.undo().isPresent()) {
                open.assertSaved("undoing, seed " + seed);
            }
            OpenProject.assertSame(start, open.session.definition(), "all undone, seed " + seed);
            assertEquals(Optional.empty(), open.session.lookOutside(), "seed " + seed);
        }
    }

    /** The other person edits the files as they are; now and then the disk is full, so that conflicts come about. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14, 16, 17, 18})
    void besideAnEditorNothingIsLost(long seed) throws IOException {
        Random random = new Random(seed);
        RandomRecords records = new RandomRecords(random);
        RandomEdits edits = new RandomEdits(records, List.of(RecordKinds.NEED, RecordKinds.LINE_SOLD)); // to meet often
        int conflicts = 0;
        try (OpenProject open = OpenProject.of(temp.resolve("beside"), known(records.project(12)))) {
            for (int i = 0; i < 90; i++) {
                String message = "seed " + seed + ", step " + i;
                switch (random.nextInt(7)) {
                    case 0, 1 -> byEditor(open.folder, edits);
                    case 2 -> open.session.lookOutside();
                    case 3 -> open.session.undo();
                    case 4 -> open.disk.fillUp();
                    default -> edit(open, edits);
                }
                if (random.nextInt(8) == 0) {
                    open.disk.mend();
                    open.session.save();
                }
                conflicts += open.session.standing().conflicts().size();
                if (i % 4 == 0) {
                    assertConsistent(open, message);
                }
            }
            open.disk.mend();
            settleAll(open, random, seed);
            open.session.save();
            open.assertSaved("in the end, seed " + seed);
        }
        assertTrue(conflicts > 0, "the test is no test without conflicts, seed " + seed);
    }

    /** Saved means the same on disk, unless the editor was there since; open conflicts hold what both sides say. */
    private static void assertConsistent(OpenProject open, String message) {
        for (Conflict conflict : open.session.standing().conflicts()) {
            assertEquals(conflict.ours(), open.session.definition().value(conflict.address()), message);
        }
        if (open.session.standing().saving() instanceof Saving.Saved
                && open.session.lookOutside().isEmpty()) {
            OpenProject.assertSame(open.session.definition(), OpenProject.read(open.folder), message);
        }
    }

    private static void settleAll(OpenProject open, Random random, long seed) {
        open.session.save();
        int most = 200;
        while (!open.session.standing().conflicts().isEmpty()) {
            List<Conflict> all = open.session.standing().conflicts();
            Session.Choice choice = Session.Choice.values()[random.nextInt(2)];
            Conflict conflict = all.get(random.nextInt(all.size()));
            Optional<Object> chosen = choice == Session.Choice.KEEP_OURS ? conflict.ours() : conflict.theirs();
            open.session.settle(conflict, choice);
            assertEquals(chosen, open.session.definition().value(conflict.address()), "seed " + seed);
            assertTrue(--most > 0, "conflicts do not end, seed " + seed);
        }
    }

    /** Writes what changed with a plain editor, file by file, in place. */
    private static void byEditor(Path folder, RandomEdits edits) throws IOException {
        Definition before = OpenProject.read(folder);
        List<RecordId> gone = new ArrayList<>();
        for (Definition.Change change : Definition.changes(before, known(edits.edits(before, 2)))) {
            Optional<Entry> after = change.after();
            after.ifPresent(record -> OpenProject.writeFile(folder, record));
            if (after.isEmpty()) {
                gone.add(change.id());
            }
        }
        for (RecordId id : gone) {
            Files.delete(OpenProject.file(folder, id.text()));
        }
    }
}
