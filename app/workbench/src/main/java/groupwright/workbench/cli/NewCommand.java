package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.NewProject;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Starts a project. */
@Command(
        name = "new",
        customSynopsis = "groupwright new FOLDER [--name NAME] [--currency EUR] [--json]",
        sortOptions = false,
        description = "Start a project in a new or empty folder.")
final class NewCommand implements Callable<Exit> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "FOLDER", description = "A folder that is new or empty.")
    private String folder;

    @Option(names = "--name", paramLabel = "NAME", description = "Name of the project; that of the folder if left out.")
    private String name;

    @Option(
            names = "--currency",
            paramLabel = "EUR",
            defaultValue = "EUR",
            description = "Currency of all amounts of money, a code of ISO 4217.")
    private String currency;

    @Mixin
    private CommonOptions options;

    NewCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() {
        Path path = surroundings.path(folder);
        String called = name == null ? lastName(path) : name;
        checkSettings(called);
        Optional<Problem> problem = NewProject.start(path, called, currency, Optional.empty());
        if (problem.isPresent()) {
            throw new Refusal(List.of(problem.get()));
        }
        surroundings.answer(options.isForMachine() ? JsonText.of(json(path, called)) : text(path, called));
        return Exit.FINE;
    }

    /** Before anything is written, so that a mistake leaves no folder behind. */
    private void checkSettings(String called) {
        try {
            Definition.of(NewProject.project(called, currency, Optional.empty()));
        } catch (Invalid invalid) {
            throw Refusal.of("--" + invalid.field() + ": " + invalid.wrong(), invalid.remedy());
        }
    }

    private static String lastName(Path path) {
        Path last = path.toAbsolutePath().normalize().getFileName();
        return last == null ? "project" : last.toString();
    }

    private ObjectNode json(Path path, String called) {
        return JsonText.start()
                .put("project", surroundings.shown(path))
                .put("name", called)
                .put("currency", currency);
    }

    private String text(Path path, String called) {
        String shown = surroundings.typed(path);
        return "Started \"" + called + "\" in " + shown + ".\n"
                + "Next: add a rider group (" + shown + "/riders/G-001.json), a need (" + shown
                + "/needs/N-001.json) and a concept (" + shown + "/concepts/C-001.json), then see what is missing: "
                + surroundings.call() + " check " + shown + "\n";
    }
}
