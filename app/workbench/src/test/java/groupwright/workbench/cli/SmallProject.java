package groupwright.workbench.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** A copy of the small project of the test resources that a test may change. */
record SmallProject(Path folder) {
    /** Copies it to the folder {@code small} below another. */
    static SmallProject below(Path parent) {
        try {
            Path source = Path.of(SmallProject.class.getResource("small").toURI());
            return copied(source, parent.resolve("small"));
        } catch (URISyntaxException broken) {
            throw new IllegalStateException(broken);
        }
    }

    /** Copies a project. */
    static SmallProject copied(Path source, Path target) {
        try (Stream<Path> files = Files.walk(source)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.copy(file, target.resolve(source.relativize(file).toString()));
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return new SmallProject(target);
    }

    /** Replaces words in a file that holds them. */
    SmallProject with(String file, String words, String others) {
        try {
            Path path = folder.resolve(file);
            String text = Files.readString(path);
            if (!text.contains(words)) {
                throw new IllegalArgumentException(file + " does not hold " + words);
            }
            Files.writeString(path, text.replace(words, others));
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /** Writes a file. */
    SmallProject with(String file, byte[] content) {
        try {
            Path path = folder.resolve(file);
            Files.createDirectories(path.getParent());
            Files.write(path, content);
            return this;
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    Run run(String... arguments) {
        return Run.in(folder.getParent(), arguments);
    }
}
