package groupwright.definition.storage;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.AnnotatedElementContext;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDirFactory;

/** Temporary folders in memory where the system offers that (Linux): tests that simulate power cuts need no real disk. */
final class MemoryFolder implements TempDirFactory {
    private static final Path MEMORY = Path.of("/dev/shm");

    @Override
    public Path createTempDirectory(AnnotatedElementContext element, ExtensionContext extension) throws Exception {
        return Files.isDirectory(MEMORY) && Files.isWritable(MEMORY)
                ? Files.createTempDirectory(MEMORY, "groupwright")
                : Files.createTempDirectory("groupwright");
    }
}
