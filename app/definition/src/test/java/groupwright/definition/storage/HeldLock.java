package groupwright.definition.storage;

import java.io.IOException;
import java.nio.file.Path;

/** Opens a project for writing in a process of its own and keeps it open until killed. */
final class HeldLock {
    private HeldLock() {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Opening opening =
                ProjectFolder.at(Path.of(arguments[0]), Project.FOLDERS).openForWriting();
        System.out.println(opening.getClass().getSimpleName());
        Thread.currentThread().join(); // for ever
    }
}
