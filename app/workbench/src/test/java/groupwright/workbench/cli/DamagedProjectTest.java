package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sample with files lost, cut, emptied and changed at random: still answered, and never an internal error. */
class DamagedProjectTest {
    private static final int DAMAGES = 12;

    @TempDir
    Path folder;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void damageIsAnswered(long seed) throws IOException {
        SmallProject.copied(Path.of("../../samples/tarnbeck"), folder.resolve("damaged"));
        Random random = new Random(seed);
        List<Path> files = records(folder.resolve("damaged"));
        for (int i = 0; i < DAMAGES; i++) {
            damage(files.get(random.nextInt(files.size())), random);
        }
        Run check = Run.in(folder, "check", "damaged", "--json", "--stacktrace");
        assertTrue(check.exit() != 3, "seed " + seed + ": " + check.err());
        Schemas.CHECK.accepts(check.out());
        Run figures = Run.in(folder, "figures", "damaged", "--json", "--stacktrace");
        assertTrue(figures.exit() == 0 || figures.exit() == 2, "seed " + seed + ": " + figures.err());
        Schemas.FIGURES.accepts(figures.out());
        Run text = Run.in(folder, "check", "damaged");
        assertEquals(check.exit(), text.exit(), "seed " + seed);
        assertEquals(check.err(), text.err(), "seed " + seed);
    }

    private static List<Path> records(Path project) throws IOException {
        try (Stream<Path> files = Files.walk(project)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith("project.json"))
                    .sorted()
                    .toList();
        }
    }

    private static void damage(Path file, Random random) throws IOException {
        String text = Files.exists(file) ? Files.readString(file) : "{}";
        switch (random.nextInt(5)) {
            case 0 -> Files.deleteIfExists(file);
            case 1 -> Files.writeString(file, text.substring(0, random.nextInt(text.length() + 1)));
            case 2 -> Files.writeString(file, text.replaceAll("[0-9](?=,)", Integer.toString(random.nextInt(10))));
            case 3 -> Files.writeString(file, text.replaceAll("[A-Z]-00[0-9]", "C-00" + random.nextInt(5)));
            default -> Files.writeString(file, text.replaceFirst("\"[a-zA-Z]+_[a-z]+\": ", "\"gone\": "));
        }
    }
}
