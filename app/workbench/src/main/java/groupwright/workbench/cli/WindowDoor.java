package groupwright.workbench.cli;

import java.nio.file.Path;
import java.util.Optional;

/** Opens the window. The command line knows it only so far, because commands must run where there is no display. */
@FunctionalInterface
public interface WindowDoor {
    /** What became of it. */
    sealed interface Outcome {}

    /** The window was open and has been closed again. */
    record Closed() implements Outcome {}

    /** There is no window; the sentence, without a full stop, says why. Documents can be written. */
    record NoDisplay(String why) implements Outcome {}

    /** There is none, and this process cannot paint any more; another one wrote the documents and ended so. */
    record WrittenElsewhere(int exit) implements Outcome {}

    /** The door of a program without a window. */
    WindowDoor NONE = project -> new NoDisplay("this program was started without a window");

    /**
     * Opens it and waits until it is closed.
     *
     * @param project the folder of a project; nothing means the one last worked on, or the sample
     */
    Outcome open(Optional<Path> project);
}
