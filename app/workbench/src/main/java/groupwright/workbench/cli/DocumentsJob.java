package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Nearest;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.numbers.Reader;
import groupwright.documents.pages.FontShelf;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.BikeChoice;
import groupwright.documents.project.Format;
import groupwright.documents.project.ProjectDocuments;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Writing some documents of a project.
 *
 * @param only which; all the project has where none is named
 * @param bikes ids of those the documents speak of; all in use where none is named
 * @param formats what each is written as
 * @param date the date they carry; the project's own where nothing is said
 * @param reader whose language and measures they are in
 * @param paper of the PDF
 * @param out the folder to write to
 */
record DocumentsJob(
        List<String> only,
        List<String> bikes,
        Set<Format> formats,
        Optional<LocalDate> date,
        Reader reader,
        PaperSize paper,
        Path out) {
    /** Writes them and says where they are. */
    Exit write(Surroundings surroundings, OpenProject project, boolean forMachine) {
        ProjectDocuments documents = new ProjectDocuments(
                        project.view(), project.files(), project.folder(), reader, new FontShelf(), paper)
                .about(choice(project));
        ProjectDocuments.Outcome outcome = documents.write(chosen(documents.available()), date, out, formats);
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

    private BikeChoice choice(OpenProject project) {
        try {
            return BikeChoice.of(project.definition(), RecordChoice.of(project.definition(), RecordKinds.BIKE, bikes));
        } catch (Invalid invalid) {
            throw Refusal.of(invalid);
        }
    }

    /** Those asked for, in the order of the shelf and each once. */
    private List<String> chosen(List<String> known) {
        for (String name : only) {
            if (!known.contains(name)) {
                throw Refusal.of(
                        "there is no document \"" + name + "\"",
                        Nearest.of(name, known)
                                .map(near -> "did you mean " + near + "?")
                                .orElse("the documents are " + String.join(", ", known)));
            }
        }
        return only.isEmpty() ? known : known.stream().filter(only::contains).toList();
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
