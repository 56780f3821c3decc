package groupwright.workbench.cli;

import groupwright.documents.numbers.Reader;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.Format;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the program does without a command: the window, or where none can open the documents. */
@Command(
        name = "groupwright",
        customSynopsis = "groupwright [FOLDER] or groupwright COMMAND …",
        versionProvider = StartCommand.Version.class,
        sortOptions = false,
        synopsisSubcommandLabel = "COMMAND",
        description = {
            "From what riders need to the definition of one bicycle groupset, with every number traceable.",
            "Without a command: opens the window on the project in FOLDER, on the one last worked on, or on the sample."
                    + " Without a display: writes the documents of FOLDER or the sample to the folder documents."
        },
        footer = {
            "",
            "Exit codes: 0 fine; 1 an agreed requirement of the lead concept misses for certain, or an approved"
                    + " claim no longer holds; 2 bad usage, or something could not be read; 3 internal error or cancelled."
        })
final class StartCommand implements Callable<Exit> {
    /** The option that keeps the window closed. */
    static final String NO_WINDOW = "--no-window";

    private final Surroundings surroundings;

    /** The version that the jar states. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = StartCommand.class.getPackage().getImplementationVersion();
            return new String[] {"Groupwright " + (version == null ? "(not built as a jar)" : version)};
        }
    }

    @Mixin
    private CommonOptions options;

    @Option(names = "--version", versionHelp = true, description = "Show the version.")
    private boolean version;

    @Option(names = NO_WINDOW, description = "Write the documents and open no window.")
    private boolean noWindow;

    @Parameters(arity = "0..1", paramLabel = "FOLDER", description = "The folder of a project.")
    private String folder;

    StartCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        if (noWindow || options.isForMachine()) {
            return documents();
        }
        WindowDoor.Outcome outcome =
                surroundings.door().open(Optional.ofNullable(folder).map(surroundings::path));
        if (outcome instanceof WindowDoor.NoDisplay none) {
            surroundings.say("No window: " + none.why() + "; the documents are written instead.");
            return documents();
        } else if (outcome instanceof WindowDoor.WrittenElsewhere written) {
            return Exit.of(written.exit());
        }
        return Exit.FINE;
    }

    private Exit documents() throws InterruptedException {
        Path project = folder == null ? sample() : surroundings.path(folder);
        DocumentsJob job = new DocumentsJob(
                List.of(),
                List.of(),
                EnumSet.allOf(Format.class),
                Optional.empty(),
                new Reader(Locale.ENGLISH),
                PaperSize.A4,
                surroundings.path("documents"));
        return OpenProject.doing(surroundings, project, opened -> {
            Exit exit = job.write(surroundings, opened, options.isForMachine());
            if (exit == Exit.FINE && !options.isForMachine()) {
                surroundings.answer(next(surroundings.typed(project)));
            }
            return exit;
        });
    }

    private Path sample() {
        return surroundings
                .sample()
                .orElseThrow(() -> Refusal.of(
                        "the sample project is not beside the program",
                        "build the program, or name a project: groupwright FOLDER"));
    }

    private String next(String project) {
        String call = surroundings.call();
        return "How the project stands: " + call + " check " + project + "\n"
                + "Change a cog in " + project + "/concepts, then see what moved: " + call + " check " + project
                + "; and why: " + call + " explain " + project + " \"largest-step lead\"\n";
    }
}
