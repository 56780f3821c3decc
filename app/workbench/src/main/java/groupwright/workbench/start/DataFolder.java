package groupwright.workbench.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where the program keeps what is its own: preferences and the copy of the sample a user plays with.
 *
 * @param path the folder, which need not exist yet
 */
public record DataFolder(Path path) {
    /** The system property that names another folder. */
    public static final String PROPERTY = "groupwright.data";

    /**
     * The folder of this user: as the property says, else after the habits of the system (XDG Base Directory Specification on
     * Linux and its kin).
     *
     * @param environment of the process
     */
    public static DataFolder of(Map<String, String> environment) {
        String given = System.getProperty(PROPERTY, "");
        if (!given.isEmpty()) {
            return new DataFolder(Path.of(given));
        }
        String home = System.getProperty("user.home", "");
        String system = System.getProperty("os.name", "");
        if (system.startsWith("Windows")) {
            return new DataFolder(named(environment, "APPDATA")
                    .orElse(Path.of(home, "AppData", "Roaming"))
                    .resolve("Groupwright"));
        } else if (system.startsWith("Mac")) {
            return new DataFolder(Path.of(home, "Library", "Application Support", "Groupwright"));
        }
        return new DataFolder(named(environment, "XDG_DATA_HOME")
                .orElse(Path.of(home, ".local", "share"))
                .resolve("groupwright"));
    }

    private static Optional<Path> named(Map<String, String> environment, String variable) {
        try {
            return Optional.ofNullable(environment.get(variable)).map(Path::of).filter(Path::isAbsolute);
        } catch (InvalidPathException noPath) {
            return Optional.empty();
        }
    }

    /** Where the user's copy of the sample lies. */
    public Path sample() {
        return path.resolve("samples").resolve("tarnbeck");
    }

    /** Where drafts of templates lie, and what the numbers of documents read when they were written last. */
    public Path documents() {
        return path.resolve("documents");
    }

    /** Where preferences lie. */
    Path preferences() {
        return path.resolve("preferences.properties");
    }

    /**
     * The user's copy of the sample, made where there is none, so that what is tried out is kept and the sample stays as it
     * came.
     *
     * @param shipped the sample as it came with the program
     * @throws IOException if it cannot be copied; the sentence says why
     */
    public Path sampleLike(Path shipped) throws IOException {
        if (!Files.exists(sample().resolve("project.json"))) {
            copy(shipped);
        }
        return sample();
    }

    /**
     * The sample once more as it came; what the user made of it is kept beside it.
     *
     * @return where the earlier copy lies now; nothing where there was none
     */
    public Optional<Path> freshSample(Path shipped) throws IOException {
        Optional<Path> kept = Optional.empty();
        if (Files.exists(sample())) {
            Path away = free(sample());
            Files.move(sample(), away);
            kept = Optional.of(away);
        }
        copy(shipped);
        return kept;
    }

    private static Path free(Path like) {
        int number = 1;
        while (Files.exists(like.resolveSibling(like.getFileName() + "-" + number))) {
            number++;
        }
        return like.resolveSibling(like.getFileName() + "-" + number);
    }

    /** Copies into a folder beside and moves that into place, so that half a sample is never taken for one. */
    private void copy(Path shipped) throws IOException {
        Files.createDirectories(sample().getParent());
        Path half = Files.createTempDirectory(sample().getParent(), ".copy-");
        try (Stream<Path> files = Files.walk(shipped)) {
            for (Path file : files.toList()) {
                Path target = half.resolve(shipped.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
        Files.move(half, sample());
    }
}
