package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Scope;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows the figures of a project. */
@Command(
        name = "figures",
        customSynopsis = "groupwright figures PROJECT [--concept C-001] [--riders G-001] [--bike B-001]"
                + " [--figure FIGURE] [--workings] [--json]",
        sortOptions = false,
        description = "Show the figures of a project: all, or those chosen.")
final class FiguresCommand implements Callable<Exit> {
    private final Surroundings surroundings;

    @Parameters(paramLabel = "PROJECT", description = "The folder of the project.")
    private String project;

    @Option(
            names = "--concept",
            split = ",",
            paramLabel = "C-001,…",
            description = "Only these concepts, parked ones too.")
    private List<String> concepts = List.of();

    @Option(names = "--riders", split = ",", paramLabel = "G-001,…", description = "Only these rider groups.")
    private List<String> riders = List.of();

    @Option(names = "--bike", split = ",", paramLabel = "B-001,…", description = "Only these bikes.")
    private List<String> bikes = List.of();

    @Option(
            names = "--figure",
            paramLabel = "FIGURE",
            description = "Only this figure, with parameters if need be: \"largest-step from-teeth=14\". Repeatable.")
    private List<String> figures = List.of();

    @Option(names = "--workings", description = "With formula, inputs and figures used; for --json.")
    private boolean workings;

    @Mixin
    private CommonOptions options;

    FiguresCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        if (workings && !options.isForMachine()) {
            throw Refusal.of("--workings is for --json", "add --json, or ask for one figure with groupwright explain");
        }
        return OpenProject.doing(surroundings, surroundings.path(project), opened -> {
            Questions questions = questions(opened);
            surroundings.answer(
                    options.isForMachine()
                            ? JsonText.of(json(opened, questions))
                            : new FiguresText(opened.view(), new Reader(Locale.ENGLISH)).of(questions));
            return Exit.FINE;
        });
    }

    private Questions questions(OpenProject opened) {
        try {
            List<FigureText> texts = figures.stream().map(FigureText::parse).toList();
            Selection selection = new Selection(Map.of(
                    Scope.CONCEPT, RecordChoice.of(opened.definition(), RecordKinds.CONCEPT, concepts),
                    Scope.RIDERS, RecordChoice.of(opened.definition(), RecordKinds.RIDER_GROUP, riders),
                    Scope.BIKE, RecordChoice.of(opened.definition(), RecordKinds.BIKE, bikes)));
            return texts.isEmpty() ? Questions.all(opened, selection) : Questions.about(opened, selection, texts);
        } catch (Invalid invalid) {
            throw Refusal.of(invalid);
        }
    }

    private ObjectNode json(OpenProject opened, Questions questions) {
        View view = opened.view();
        Function<Ask, ObjectNode> each =
                workings ? new WorkingsJson(view)::of : ask -> AnswerJson.of(ask, view.ask(ask), view.band(ask));
        ObjectNode answer = JsonText.start();
        answer.set("figures", JsonText.list(questions.asks(), each));
        answer.set("leftOut", JsonText.list(questions.leftOut(), FiguresCommand::leftOut));
        answer.set("problems", JsonText.problems(opened.problems()));
        return answer;
    }

    private static ObjectNode leftOut(Questions.LeftOut leftOut) {
        return JsonText.NODES
                .objectNode()
                .put("figure", leftOut.figure())
                .put("wrong", leftOut.wrong())
                .put("remedy", leftOut.remedy());
    }
}
