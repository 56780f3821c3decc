package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Stops the machine before and after every writing operation and loses what was not forced, in many ways. */
class CrashTest {
    private static final Map<String, String> START = Map.of(
            "project.json", "{\"name\": \"a\"}\n",
            "needs/N-001.json", "{\"words\": \"one\"}\n",
            "needs/N-002.json", "{\"words\": \"two\"}\n",
            "requirements/R-001.json", "{\"target\": 1}\n",
            "requirements/R-002.json", "{\"target\": 2}\n",
            "templates/brief.md", "left alone\n");

    /**
     * Edits done one after the other in one session.
     *
     * @param edits for each edit, path and new text, or an empty text where the file goes
     */
    private record Scenario(String name, Map<String, String> start, List<Map<String, String>> edits) {
        Scenario(String name, List<Map<String, String>> edits) {
            this(name, START, edits);
        }

        /** What the project holds after so many edits. */
        SortedMap<String, String> state(int done) {
            SortedMap<String, String> state = new TreeMap<>(start);
            state.remove("templates/brief.md");
            edits.subList(0, done).forEach(state::putAll);
            state.values().removeIf(String::isEmpty);
            return state;
        }

        List<Change> changes(int index) {
            SortedMap<String, String> before = state(index);
            List<Change> changes = new ArrayList<>();
            edits.get(index)
                    .forEach((path, text) -> changes.add(new Change(
                            Project.path(path),
                            Optional.ofNullable(before.get(path))
                                    .map(old -> Content.ofText(old).sha256()),
                            text.isEmpty() ? Optional.empty() : Optional.of(Content.ofText(text)))));
            return changes;
        }

        @Override
        public String toString() {
            return name;
        }
    }

    private static final Map<String, String> SEVERAL = Map.of(
            "needs/N-001.json", "{\"words\": \"one and more\"}\n",
            "requirements/R-001.json", "{\"target\": 10}\n",
            "requirements/R-002.json", "{\"target\": 20}\n",
            "requirements/R-003.json", "{\"target\": 30}\n",
            "concepts/C-001.json", "{\"rings\": [32]}\n");

    private static final Map<String, String> BACK = Map.of(
            "needs/N-001.json", "{\"words\": \"one\"}\n",
            "requirements/R-001.json", "{\"target\": 1}\n",
            "requirements/R-002.json", "{\"target\": 2}\n",
            "requirements/R-003.json", "",
            "concepts/C-001.json", "");

    static Stream<Scenario> scenarios() {
        return Stream.of(
                new Scenario("one file changed", List.of(Map.of("requirements/R-001.json", "{\"target\": 9}\n"))),
                new Scenario("one file new", List.of(Map.of("requirements/R-003.json", "{\"target\": 9}\n"))),
                new Scenario("one file and its folder new", List.of(Map.of("concepts/C-001.json", "{}\n"))),
                new Scenario("one file gone", List.of(Map.of("requirements/R-002.json", ""))),
                new Scenario("three changed, one new, one new in a new folder", List.of(SEVERAL)),
                new Scenario(
                        "edit, undo, redo, one file, undo",
                        List.of(
                                SEVERAL,
                                BACK,
                                SEVERAL,
                                Map.of("requirements/R-001.json", "{\"target\": 11}\n"),
                                Map.of("requirements/R-001.json", "{\"target\": 10}\n"),
                                BACK)),
                new Scenario(
                        "new project",
                        Map.of(),
                        List.of(
                                Map.of("project.json", "{}\n", "needs/N-001.json", "{}\n"),
                                Map.of("needs/N-002.json", "{}\n"))));
    }

    @TempDir(factory = MemoryFolder.class)
    private Path temp;

    private Path scratch;
    private int number;

    @BeforeEach
    void realScratch() throws IOException {
        scratch = temp.toRealPath();
    }

    private Path freshFolder() throws IOException {
        return Files.createDirectory(scratch.resolve("case-" + number++));
    }

    private Path freshStart(Scenario scenario) throws IOException {
        Path base = freshFolder();
        Project.write(base.resolve("p"), scenario.start());
        return base;
    }

    /** What a machine did until it stopped. */
    private record Run(CrashingDisk disk, int committed, boolean crashed) {}

    private static Run run(Scenario scenario, Path base, int operations) throws IOException {
        CrashingDisk disk = new CrashingDisk(base, operations);
        ProjectFolder folder = Project.folder(base.resolve("p"), disk);
        int committed = 0;
        Optional<ProjectWriter> writer = Optional.empty();
        try {
            Opening opening = scenario.start().isEmpty() ? folder.startNew() : folder.openForWriting();
            writer = Optional.of(assertInstanceOf(Opening.Opened.class, opening).writer());
            for (int index = 0; index < scenario.edits().size(); index++) {
                Outcome outcome = writer.get().commit(scenario.changes(index));
                assertEquals("Saved.", outcome.sentence());
                committed++;
            }
            return new Run(disk, committed, false);
        } catch (CrashingDisk.Crash crash) {
            return new Run(disk, committed, true);
        } finally {
            if (writer.isPresent()) {
                writer.get().close(); // writes nothing, so that the stopped machine need not know
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void everyEditIsWhollyThereOrWhollyAbsent(Scenario scenario) throws IOException {
        Set<Map.Entry<Integer, DurableModel.Left>> seen = new HashSet<>();
        boolean crashed = true;
        for (int operations = 0; crashed; operations++) {
            Path base = freshStart(scenario);
            Run run = run(scenario, base, operations);
            crashed = run.crashed();
            for (Chance chance : Chance.several(16)) {
                DurableModel.Left left = run.disk().model().left(chance);
                if (seen.add(Map.entry(run.committed(), left))) { // many chances leave the same
                    String message =
                            operations + " operations, " + run.committed() + " edits, " + chance.name() + ", " + left;
                    checkEditsWhole(scenario, run.committed(), left, message);
                }
            }
            Project.delete(base);
        }
    }

    /** All edits acknowledged are there, the one in work may be, and recovery changes nothing of that. */
    private void checkEditsWhole(Scenario scenario, int committed, DurableModel.Left left, String message)
            throws IOException {
        Path folder = freshFolder();
        left.write(folder);
        Path root = folder.resolve("p");
        int most = Math.min(committed + 1, scenario.edits().size());
        List<SortedMap<String, String>> allowed = List.of(scenario.state(committed), scenario.state(most));
        if (!Files.exists(root)) {
            assertTrue(allowed.contains(new TreeMap<String, String>()), message);
            return;
        }
        Snapshot seen = Project.folder(root, new PassingDisk()).read();
        SortedMap<String, String> texts = Project.texts(seen);
        assertTrue(allowed.contains(texts), () -> message + ": read " + texts + Project.sentences(seen));
        checkRecovery(root, texts, message);
        assertEquals(
                scenario.start().containsKey("templates/brief.md"), Files.exists(root.resolve("templates/brief.md")));
        Project.delete(folder);
    }

    private static void checkRecovery(Path root, SortedMap<String, String> texts, String message) throws IOException {
        ProjectFolder folder = Project.folder(root, new PassingDisk());
        Opening opening = texts.isEmpty() ? folder.startNew() : folder.openForWriting();
        Opening.Opened opened = assertInstanceOf(Opening.Opened.class, opening, message);
        try (ProjectWriter writer = opened.writer()) {
            assertEquals(List.of(), opened.problems(), message);
            assertEquals(texts, Project.texts(writer.read()), message);
            assertEquals(texts.isEmpty() ? 1 : 0, writer.read().problems().size(), message);
            assertEquals(List.of("lock"), Project.ownNames(root), message);
        }
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void aCrashDuringRecoveryChangesNothing(Scenario scenario) throws IOException {
        Set<DurableModel.Left> seen = new HashSet<>();
        boolean crashed = true;
        for (int operations = 0; crashed; operations++) {
            Path base = freshStart(scenario);
            Run run = run(scenario, base, operations);
            crashed = run.crashed();
            for (Chance chance : Chance.several(4)) {
                DurableModel.Left left = run.disk().model().left(chance);
                if (seen.add(left) && isProject(left)) {
                    crashRecovery(left);
                }
            }
            Project.delete(base);
        }
    }

    private static boolean isProject(DurableModel.Left left) {
        return left.files().containsKey("p/project.json")
                || left.files().containsKey("p/.groupwright/journal/manifest");
    }

    private void crashRecovery(DurableModel.Left first) throws IOException {
        Set<DurableModel.Left> seen = new HashSet<>();
        boolean crashed = true;
        for (int operations = 0; crashed; operations++) {
            Path folder = freshFolder();
            first.write(folder);
            Path root = folder.resolve("p");
            SortedMap<String, String> texts =
                    Project.texts(Project.folder(root, new PassingDisk()).read());
            CrashingDisk disk = new CrashingDisk(folder, operations);
            crashed = !opens(root, disk);
            for (Chance chance : Chance.several(4)) {
                DurableModel.Left second = disk.model().left(chance);
                if (seen.add(second)) {
                    String message = first + ", then " + operations + " operations, " + chance.name() + ", " + second;
                    checkRecovered(second, texts, message);
                }
            }
            Project.delete(folder);
        }
    }

    private void checkRecovered(DurableModel.Left left, SortedMap<String, String> texts, String message)
            throws IOException {
        Path folder = freshFolder();
        left.write(folder);
        checkRecovery(folder.resolve("p"), texts, message);
        Project.delete(folder);
    }

    private static boolean opens(Path root, Disk disk) throws IOException {
        try {
            Project.open(root, disk).close();
            return true;
        } catch (CrashingDisk.Crash crash) {
            return false;
        }
    }
}
