package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Ask;
import groupwright.definition.record.Invalid;
import groupwright.definition.sensitivity.StatedChange;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows how one answer came about. */
@Command(
        name = "explain",
        customSynopsis = "groupwright explain PROJECT \"FIGURE SUBJECT…\" [--moves [--change 1]] [--json]",
        sortOptions = false,
        description = {
            "Show the workings of one figure as a tree: formula, inputs and where they are kept, other figures used.",
            "For example \"climb-cadence lead G-001 climb=steep-12\"; lead stands for the lead concept."
        })
final class ExplainCommand implements Callable<Exit> {
    private final Surroundings surroundings;

    @Parameters(index = "0", paramLabel = "PROJECT", description = "The folder of the project.")
    private String project;

    @Parameters(
            index = "1..*",
            arity = "1..*",
            paramLabel = "FIGURE",
            description = "A figure, its records and parameters.")
    private List<String> words;

    @Option(names = "--moves", description = "Show instead which inputs move the number most, each changed alone.")
    private boolean moves;

    @Option(
            names = "--change",
            paramLabel = "PCT",
            description = "By how much --moves changes measured numbers, in percent; 1 if left out.")
    private String change;

    @Mixin
    private CommonOptions options;

    ExplainCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        if (change != null && !moves) {
            throw Refusal.of("--change is for --moves", "add --moves");
        }
        StatedChange stated = stated();
        return OpenProject.doing(surroundings, surroundings.path(project), opened -> {
            Ask ask = opened.ask(String.join(" ", words));
            if (moves) {
                MovesReport report = MovesReport.of(opened, ask, stated);
                surroundings.answer(
                        options.isForMachine() ? JsonText.of(report.json()) : report.text(new Reader(Locale.ENGLISH)));
                return Exit.FINE;
            }
            surroundings.answer(
                    options.isForMachine()
                            ? JsonText.of(json(opened, ask))
                            : new WorkingsText(opened.view(), new AnswerText(new Reader(Locale.ENGLISH))).of(ask));
            return Exit.FINE;
        });
    }

    private StatedChange stated() {
        if (change == null) {
            return StatedChange.USUAL;
        }
        try {
            return new StatedChange(Words.number("--change", change));
        } catch (Invalid invalid) {
            throw Refusal.of("--change: " + invalid.wrong(), invalid.remedy());
        }
    }

    private static ObjectNode json(OpenProject opened, Ask ask) {
        ObjectNode answer = JsonText.start();
        answer.set("figures", JsonText.list(List.of(ask), new WorkingsJson(opened.view())::of));
        answer.set("problems", JsonText.problems(opened.problems()));
        return answer;
    }
}
