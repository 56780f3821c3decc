package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.problem.Problem;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Format;
import groupwright.documents.project.ProjectDocuments;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Writing some documents of a project.
 *
 * @param names which
 * @param formats what each is written as
 * @param date the date they carry; the project's own where nothing is said
 * @param language the language of numbers, dates and fixed words
 * @param out the folder to write to
 */
record DocumentsJob(List<String> names, Set<Format> formats, Optional<LocalDate> date, Locale language, Path out) {
    /** Writes them and says where they are. */
    Exit write(Surroundings surroundings, OpenProject project, boolean forMachine) {
        ProjectDocuments.Outcome outcome = new ProjectDocuments(
                        project.view(), project.files(), project.folder(), new Reader(language))
                .write(names, date, out, formats);
        if (!outcome.problems().isEmpty()) {
            List<Problem> problems = new ArrayList<>(project.problems());
            outcome.problems().forEach(sentence -> problems.add(problem(sentence)));
            throw new Refusal(problems);
        }
        outcome.warnings().forEach(surroundings::say);
        surroundings.answer(
                forMachine
                        ? JsonText.of(json(surroundings, outcome, project.problems()))
                        : text(surroundings, project, outcome));
        return Exit.FINE;
    }

    private static Problem problem(String sentence) {
        return Problem.ofFile("", sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence, "");
    }

    private ObjectNode json(Surroundings surroundings, ProjectDocuments.Outcome outcome, List<Problem> problems) {
        ObjectNode answer = JsonText.start();
        answer.set(
                "documents",
                JsonText.list(outcome.written(), file -> JsonText.NODES.textNode(surroundings.shown(file))));
        answer.set("warnings", JsonText.list(outcome.warnings(), JsonText.NODES::textNode));
        answer.set("problems", JsonText.problems(problems));
        return answer;
    }

    private String text(Surroundings surroundings, OpenProject project, ProjectDocuments.Outcome outcome) {
        String files = String.join(
                ", ",
                outcome.written().stream()
                        .map(file -> file.getFileName().toString())
                        .toList());
        return "Wrote " + files + " of \"" + project.definition().project().name() + "\" to " + surroundings.shown(out)
                + "\n";
    }
}
