package groupwright.documents.project;

import groupwright.definition.ledger.View;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Project;
import groupwright.documents.labels.Labels;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.numbers.Reader;
import groupwright.documents.pdf.PdfRenderer;
import groupwright.documents.pdf.RenderedPdf;
import groupwright.documents.template.DocumentBuilder;
import groupwright.documents.template.Expansion;
import groupwright.documents.template.Problem;
import groupwright.documents.template.Template;
import groupwright.documents.tree.DocumentTree;
import groupwright.documents.tree.Issue;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes the documents of a project, each as Markdown and PDF, from its template. All are made before the first is written,
 * so that a broken template leaves no half set behind.
 */
public final class ProjectDocuments {
    private static final int SHOWN_HASH_DIGITS = 16;

    private final View view;
    private final ProjectFiles project;
    private final TemplateShelf shelf;
    private final Reader reader;

    /**
     * Documents about one state of a project.
     *
     * @param view answers about the same definition the project's files hold
     * @param folder the project's folder; templates in its folder {@code templates} go before our own
     */
    public ProjectDocuments(View view, ProjectFiles project, Path folder, Reader reader) {
        this.view = view;
        this.project = project;
        this.shelf = new TemplateShelf(folder);
        this.reader = reader;
    }

    /** The documents there are, by the names they are asked for. */
    public static List<String> names() {
        return TemplateShelf.NAMES;
    }

    /**
     * What came of writing.
     *
     * @param written the files, in the order of documents; empty where anything was wrong before writing
     * @param problems one sentence each; the documents could not be written
     * @param warnings one sentence each; the documents are there
     */
    public record Outcome(List<Path> written, List<String> problems, List<String> warnings) {
        public Outcome {
            written = List.copyOf(written);
            problems = List.copyOf(problems);
            warnings = List.copyOf(warnings);
        }
    }

    /** A document ready to be written. */
    record Made(String name, String markdown, byte[] pdf) {}

    /**
     * Writes documents.
     *
     * @param names which, each of {@link #names()}
     * @param date the date they carry; the project's own where nothing is said
     * @param out the folder to write to; it is made if need be
     */
    public Outcome write(List<String> names, Optional<LocalDate> date, Path out) {
        List<String> problems = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        List<Made> made = new ArrayList<>();
        Optional<LocalDate> day = date.or(() -> settings().date());
        if (day.isEmpty()) {
            return new Outcome(
                    List.of(),
                    List.of(
                            "project.json: project, date: is missing, and documents carry a date; add it or give --date."),
                    List.of());
        }
        PdfRenderer pdf = new PdfRenderer();
        for (String name : names) {
            TemplateShelf.Found found = shelf.find(name);
            if (found.template().isEmpty()) {
                problems.add(found.problem());
                continue;
            }
            Expansion expansion = build(found.template().get(), name, day.get());
            if (expansion instanceof Expansion.Refused refused) {
                refused.problems().stream().map(Problem::sentence).forEach(problems::add);
            } else if (expansion instanceof Expansion.Complete complete) {
                RenderedPdf rendered = pdf.render(complete.document());
                rendered.warnings().forEach(warning -> warnings.add(name + ": " + warning));
                made.add(new Made(name, markdown(complete.document()), rendered.bytes()));
            }
        }
        return problems.isEmpty() ? new Writing(out).write(made, warnings) : new Outcome(List.of(), problems, warnings);
    }

    private static String markdown(DocumentTree document) {
        return new MarkdownRenderer().render(document);
    }

    private Expansion build(Template template, String name, LocalDate day) {
        return new DocumentBuilder().build(template, new ProjectContent(view, reader), issue(name, day));
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
        return new Issue(
                labels.text("document." + name),
                settings().name(),
                settings().company(),
                lead,
                labels.text("document.draft"),
                day,
                reader.day(day),
                project.contentHash().hex().substring(0, SHOWN_HASH_DIGITS),
                reader.locale());
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
