package groupwright.workbench.cli;

import groupwright.documents.numbers.Reader;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells how a project stands. */
@Command(
        name = "check",
        customSynopsis = "groupwright check PROJECT [--strict] [--json]",
        sortOptions = false,
        description = "Tell how a project stands: verdicts, coverage, needs, claims, advice on wording.")
final class CheckCommand implements Callable<Exit> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "PROJECT", description = "The folder of the project.")
    private String project;

    @Option(
            names = "--strict",
            description = "Also exit with 1 where a verdict is too close to call, input is missing, or a claim was"
                    + " recalculated.")
    private boolean strict;

    @Mixin
    private CommonOptions options;

    CheckCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        return OpenProject.doing(surroundings, surroundings.path(project), opened -> {
            CheckReport report = CheckReport.of(opened);
            surroundings.answer(
                    options.isForMachine()
                            ? JsonText.of(CheckJson.of(opened, report))
                            : new CheckText(opened, report, new Reader(Locale.ENGLISH)).text());
            return strict ? report.strictExit() : report.exit();
        });
    }
}
