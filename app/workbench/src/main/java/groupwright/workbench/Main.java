package groupwright.workbench;

import groupwright.workbench.cli.CommandLineFace;
import groupwright.workbench.cli.Surroundings;
import groupwright.workbench.shell.Windows;
import groupwright.workbench.start.Door;
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
    private static final String HEADLESS = "java.awt.headless";

    private Main() {}

    /** @param arguments the command line */
    public static void main(String[] arguments) {
        boolean chosen = System.getProperty(HEADLESS) != null;
        if (!chosen) {
            System.setProperty(HEADLESS, "true"); // only the window needs a display, and a dead one must not matter
        }
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        Windows windows = new Windows(program());
        Door door = new Door(windows::openAndWait, sentence -> err.print(sentence + "\n"), withoutWindow());
        Surroundings surroundings = new Surroundings(out, err, Path.of(""), program(), project -> {
            if (!chosen) {
                System.clearProperty(HEADLESS);
            }
            return door.open(project);
        });
        int exit = new CommandLineFace(surroundings).run(List.of(arguments));
        out.flush();
        err.flush();
        System.exit(exit);
    }

    /** How this program is started without a window. */
    private static List<String> withoutWindow() {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-D" + HEADLESS + "=true",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName(),
                "--no-window");
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
