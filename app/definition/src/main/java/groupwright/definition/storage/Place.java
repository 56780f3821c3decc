package groupwright.definition.storage;

import java.nio.file.Path;
import java.util.Set;

/**
 * A project folder that was found to be one.
 *
 * @param root its real path
 * @param name the folder as the user named it, for messages
 * @param recordFolders names of the folders that hold records
 * @param disk what it lies on
 */
record Place(Path root, String name, Set<String> recordFolders, Disk disk) {
    Place {
        recordFolders = Set.copyOf(recordFolders);
    }
}
