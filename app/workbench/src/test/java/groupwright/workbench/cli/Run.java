package groupwright.workbench.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** One run of the program inside the test: exit code and what it wrote. */
record Run(int exit, String out, String err) {
    /** Runs a command line in a folder. */
    static Run in(Path folder, String... arguments) {
        return in(folder, Optional.empty(), arguments);
    }

    /** The same, with the program's own jar at a place. */
    static Run in(Path folder, Optional<Path> program, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = new CommandLineFace(new Surroundings(printing(out), printing(err), folder, program))
                .run(List.of(arguments));
        return new Run(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream printing(ByteArrayOutputStream bytes) {
        return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }
}
