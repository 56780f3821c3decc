package groupwright.definition.storage;

import static java.nio.file.LinkOption.NOFOLLOW_LINKS;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes the folder of a record where there is none yet. */
record RecordFolders(Path root, Disk disk) {
    /** Not forced: the root must be forced afterwards. */
    void make(RecordPath path) throws IOException {
        Path folder = path.below(root).getParent();
        if (!Files.exists(folder, NOFOLLOW_LINKS)) {
            disk.createDirectory(folder);
        }
    }
}
