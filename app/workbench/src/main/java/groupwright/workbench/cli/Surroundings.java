package groupwright.workbench.cli;

import groupwright.definition.problem.Problem;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * What a run of the program touches.
 *
 * @param out where answers go
 * @param err where messages go
 * @param folder where relative paths begin; empty means the folder the program was started in
 * @param program the jar that runs, if it is one
 * @param door opens the window
 */
public record Surroundings(PrintStream out, PrintStream err, Path folder, Optional<Path> program, WindowDoor door) {
    /** Without a window. */
    Surroundings(PrintStream out, PrintStream err, Path folder, Optional<Path> program) {
        this(out, err, folder, program, WindowDoor.NONE);
    }

    /** Writes one answer; it ends with one line feed. */
    void answer(String text) {
        out.print(text.endsWith("\n") ? text : text + "\n");
    }

    /** Writes one message: a sentence on a line of its own. */
    void say(String sentence) {
        err.print(sentence + "\n");
    }

    /** Writes a problem as one sentence. */
    void say(Problem problem) {
        String sentence = problem.sentence();
        say(sentence.endsWith("?.") ? sentence.substring(0, sentence.length() - 1) : sentence);
    }

    /** The place a text on the command line names. */
    Path path(String text) {
        try {
            return folder.resolve(text);
        } catch (InvalidPathException wrong) {
            throw Refusal.of("\"" + text + "\" cannot be the name of a file or folder", "write another name");
        }
    }

    /** The sample that lies beside the program. */
    Optional<Path> sample() {
        return program.map(jar -> jar.resolveSibling("samples").resolve("tarnbeck"))
                .filter(Files::isDirectory);
    }

    /** How the program is called, for hints that can be copied. */
    String call() {
        return program.map(jar -> "java -jar " + typed(jar)).orElse("groupwright");
    }

    /** A path as short as it goes: relative where it lies below the folder the program was started in. */
    String shown(Path path) {
        Path start = folder.toAbsolutePath().normalize();
        Path whole = path.toAbsolutePath().normalize();
        return (whole.startsWith(start) && !whole.equals(start) ? start.relativize(whole) : whole).toString();
    }

    /** The same, as it can be typed. */
    String typed(Path path) {
        String text = shown(path);
        return text.contains(" ") ? "\"" + text + "\"" : text;
    }
}
