package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;

/** A disk that fills up when a test wants it, for tests of other packages. */
public final class FaultyDisk {
    private final HookedDisk disk = new HookedDisk();

    /** A folder on this disk. */
    public ProjectFolder folder(Path path, Set<String> recordFolders) {
        return new ProjectFolder(path, recordFolders, disk);
    }

    /** From now on nothing more fits. */
    public void fillUp() {
        disk.hook(operation -> {
            if (operation.name().startsWith("create") || operation.name().equals("force")) {
                throw new IOException("No space left on device");
            }
        });
    }

    /** The operation of this number, counted from now, fails once. */
    public void failAt(int index) {
        disk.hook(operation -> {
            if (operation.index() == index) {
                throw new IOException("Input/output error");
            }
        });
    }

    /** From now on all is well again. */
    public void mend() {
        disk.hook(operation -> {});
    }
}
