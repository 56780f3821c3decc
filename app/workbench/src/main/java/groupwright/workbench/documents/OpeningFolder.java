package groupwright.workbench.documents;

import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Words;
import java.awt.Desktop;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Shows a folder in the program the system has for folders; says in one sentence why not. */
record OpeningFolder(Words words, Path folder) implements Bench.Work<Optional<String>> {
    /** Whether the system can be asked for it. */
    static boolean isSupported() {
        return Desktop.isDesktopSupported() && Desktop.getDesktop().isSupported(Desktop.Action.OPEN);
    }

    @Override
    public String name() {
        return words.text("openFolder");
    }

    @Override
    public Optional<String> with(Bench.Progress progress) {
        try {
            Desktop.getDesktop().open(folder.toFile());
            return Optional.empty();
        } catch (IOException | IllegalArgumentException trouble) { // the latter where the folder is gone
            return Optional.of(words.text("openFolder.trouble", folder.toString()));
        }
    }
}
