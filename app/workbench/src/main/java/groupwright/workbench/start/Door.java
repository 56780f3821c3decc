package groupwright.workbench.start;

import groupwright.workbench.cli.WindowDoor;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Opens the window where there is a display; behind a dead one it lets another process write the documents. */
public final class Door implements WindowDoor {
    /** Opens the window on a project, or on none, and waits until it is closed. */
    @FunctionalInterface
    public interface Opener {
        void openAndWait(Optional<Path> project);
    }

    private final Opener opener;
    private final Consumer<String> say;
    private final List<String> again;

    /**
     * @param opener opens the window
     * @param say tells the user a sentence
     * @param again the command that starts this program without a window, to which a project is added
     */
    public Door(Opener opener, Consumer<String> say, List<String> again) {
        this.opener = opener;
        this.say = say;
        this.again = List.copyOf(again);
    }

    @Override
    public Outcome open(Optional<Path> project) {
        Display display = Display.look();
        if (display instanceof Display.None none) {
            return new NoDisplay(none.why());
        } else if (display instanceof Display.Dead dead) {
            return elsewhere(dead, project);
        }
        opener.openAndWait(project);
        return new Closed();
    }

    private Outcome elsewhere(Display.Dead dead, Optional<Path> project) {
        say.accept("No window: " + dead.why() + "; the documents are written instead.");
        List<String> command = new ArrayList<>(again);
        project.ifPresent(path -> command.add(path.toString()));
        try {
            return new WrittenElsewhere(
                    new ProcessBuilder(command).inheritIO().start().waitFor());
        } catch (IOException broken) {
            say.accept("The documents could not be written either: " + broken.getMessage() + ".");
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
        }
        return new WrittenElsewhere(3);
    }
}
