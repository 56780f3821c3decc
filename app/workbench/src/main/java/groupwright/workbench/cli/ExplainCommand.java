package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Ask;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Shows how one answer came about. */
@Command(
        name = "explain",
        customSynopsis = "groupwright explain PROJECT \"FIGURE SUBJECT…\" [--json]",
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

    @Mixin
    private CommonOptions options;

    ExplainCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        return OpenProject.doing(surroundings, surroundings.path(project), opened -> {
            Ask ask = opened.ask(String.join(" ", words));
            surroundings.answer(
                    options.isForMachine()
                            ? JsonText.of(json(opened, ask))
                            : new WorkingsText(opened.view(), new AnswerText(new Reader(Locale.ENGLISH))).of(ask));
            return Exit.FINE;
        });
    }

    private static ObjectNode json(OpenProject opened, Ask ask) {
        ObjectNode answer = JsonText.start();
        answer.set("figures", JsonText.list(List.of(ask), new WorkingsJson(opened.view())::of));
        answer.set("problems", JsonText.problems(opened.problems()));
        return answer;
    }
}
