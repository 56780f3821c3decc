package groupwright.workbench;

import groupwright.workbench.cli.CommandLineFace;
import groupwright.workbench.cli.Surroundings;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.List;
import java.util.Optional;

/** Starts Groupwright. */
public final class Main {
    private Main() {}

    /** @param arguments the command line */
    public static void main(String[] arguments) {
        System.setProperty(
                "java.awt.headless", "true"); // no command opens a window, and a dead display must not matter
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        int exit = new CommandLineFace(new Surroundings(out, err, Path.of(""), program())).run(List.of(arguments));
        out.flush();
        err.flush();
        System.exit(exit);
    }

    /** UTF-8 whatever the platform says, so that the same answer is the same bytes everywhere. */
    private static PrintStream utf8(FileDescriptor stream) {
        return new PrintStream(new FileOutputStream(stream), false, StandardCharsets.UTF_8);
    }

    /** The jar this runs from; nothing where it runs from single classes. */
    private static Optional<Path> program() {
        CodeSource source = Main.class.getProtectionDomain().getCodeSource();
        try {
            return source == null
                    ? Optional.empty()
                    : Optional.of(Path.of(source.getLocation().toURI())).filter(Files::isRegularFile);
        } catch (URISyntaxException | IllegalArgumentException noFile) {
            return Optional.empty(); // loaded from somewhere that is no file, so nothing can lie beside it
        }
    }
}
