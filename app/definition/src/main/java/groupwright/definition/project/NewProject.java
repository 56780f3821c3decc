package groupwright.definition.project;

import groupwright.definition.interchange.RecordWriter;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Shape;
import groupwright.definition.storage.Change;
import groupwright.definition.storage.Content;
import groupwright.definition.storage.Opening;
import groupwright.definition.storage.Outcome;
import groupwright.definition.storage.ProjectWriter;
import groupwright.definition.storage.RecordPath;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Starts a project in a new or empty folder. */
public final class NewProject {
    private NewProject() {}

    /**
     * Writes the first file.
     *
     * @param currency a code of ISO 4217
     * @param date the date documents carry, if it is known already
     * @return what went wrong, in one problem; nothing when the project is there
     */
    public static Optional<Problem> start(Path path, String name, String currency, Optional<LocalDate> date) {
        Opening opening = ProjectFiles.folder(path).startNew();
        if (opening instanceof Opening.NotOpened refused) {
            return Optional.of(refused.problem());
        } else if (opening instanceof Opening.InUse inUse) {
            return problem(path, inUse.sentence());
        }
        try (ProjectWriter writer = ((Opening.Opened) opening).writer()) {
            Content content = Content.of(RecordWriter.write(project(name, currency, date)));
            Outcome outcome = writer.commit(List.of(Change.create(RecordPath.PROJECT, content)));
            return outcome instanceof Outcome.Committed ? Optional.empty() : problem(path, outcome.sentence());
        } catch (IOException closing) {
            return problem(
                    path, "the project was written, but its lock could not be released: " + closing.getMessage());
        }
    }

    private static Optional<Problem> problem(Path path, String sentence) {
        String wrong = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return Optional.of(Problem.ofFile(path.toString(), wrong, ""));
    }

    /** Project settings with everything at its usual value but what is given here. */
    public static Project project(String name, String currency, Optional<LocalDate> date) {
        Shape<Project> shape = Shape.of(Project.class);
        return groupwright.definition.interchange.Defaults.of(
                shape, java.util.Map.of("id", RecordId.PROJECT, "name", name, "currency", currency, "date", date));
    }
}
