package groupwright.documents.project;

import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Reader;
import groupwright.documents.template.DocumentBuilder;
import groupwright.documents.template.Expansion;
import groupwright.documents.template.Template;
import groupwright.documents.tree.Issue;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Fills the templates of a project.
 *
 * @param bikes that its documents speak of
 */
record Drafting(View view, ProjectFiles project, TemplateShelf shelf, Reader reader, BikeChoice bikes) {
    private static final int SHOWN_HASH_DIGITS = 16;
    private static final int MOST_NAMED = 3;

    /** The date documents carry: the one asked for, or the project's own. */
    Optional<LocalDate> day(Optional<LocalDate> asked) {
        return asked.or(() -> settings().date());
    }

    Draft draft(String name, LocalDate day) {
        TemplateShelf.Found found = shelf.find(name);
        if (found.template().isEmpty()) {
            return new Draft.Refused(List.of(Obstacle.of(found.problem())));
        }
        TemplateShelf.FoundWords words = shelf.words(reader.locale());
        if (!words.obstacles().isEmpty()) {
            return new Draft.Refused(words.obstacles());
        }
        Template template = found.template().get();
        ProjectContent content = new ProjectContent(view, reader, bikes);
        Expansion expansion = new DocumentBuilder().build(template, words.wording(), content, issue(name, day));
        if (expansion instanceof Expansion.Complete complete) {
            return new Draft.Filled(
                    complete.document(),
                    content.asks(complete.document().trace()),
                    complete.warnings().stream()
                            .map(warning -> template.name() + ": " + warning + ".")
                            .toList());
        }
        return new Draft.Refused(((Expansion.Refused) expansion)
                .problems().stream().map(Obstacle::of).toList());
    }

    private Project settings() {
        return view.definition().project();
    }

    private Issue issue(String name, LocalDate day) {
        Labels labels = Labels.of(reader.locale());
        String lead = settings()
                .leadConcept()
                .flatMap(id -> view.definition().get(id, Concept.class))
                .map(concept -> concept.id() + " " + concept.title())
                .orElse("");
        String title = TemplateShelf.NAMES.contains(name) ? labels.text("document." + name) : TemplateShelf.title(name);
        return new Issue(
                bikes.isAll() ? title : labels.text("document.only", title, ids(labels)),
                settings().name(),
                settings().company(),
                lead,
                state(labels),
                day,
                reader.day(day),
                project.contentHash().hex().substring(0, SHOWN_HASH_DIGITS),
                reader.locale(),
                reader.measures(),
                bikes.isAll()
                        ? ""
                        : bikes.bikes(view.definition()).stream()
                                .map(bike -> bike.id() + " " + bike.title())
                                .collect(Collectors.joining(labels.text("list.separator"))));
    }

    private String ids(Labels labels) {
        return bikes.chosen().stream().map(RecordId::text).collect(Collectors.joining(labels.text("list.separator")));
    }

    /** Says on each page what the document lacks: records that could not be read are in no table. */
    private String state(Labels labels) {
        List<String> unread = project.problems().stream()
                .map(Problem::file)
                .distinct()
                .filter(this::isLost)
                .toList();
        if (unread.isEmpty()) {
            return labels.text("document.draft");
        }
        return unread.size() <= MOST_NAMED
                ? labels.text("document.without", String.join(labels.text("list.separator"), unread))
                : labels.text("document.withoutMany", Integer.toString(unread.size()));
    }

    private boolean isLost(String file) {
        String name = file.substring(file.lastIndexOf('/') + 1).replaceFirst("\\.json$", "");
        return RecordId.parse(name)
                .filter(id -> view.definition().get(id).isEmpty())
                .isPresent();
    }
}
