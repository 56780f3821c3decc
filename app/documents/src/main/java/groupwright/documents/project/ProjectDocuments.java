package groupwright.documents.project;

import groupwright.definition.ledger.View;
import groupwright.definition.project.ProjectFiles;
import groupwright.documents.html.HtmlRenderer;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.numbers.Reader;
import groupwright.documents.pages.FontShelf;
import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.pages.PdfRenderer;
import groupwright.documents.pages.RenderedPdf;
import groupwright.documents.tree.DocumentTree;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The documents of a project: written as Markdown, HTML and PDF, shown as they will print, or read for their numbers, each from
 * its template. All are made before the first is written, so that a broken template leaves no half set behind. The view
 * is asked on the caller's thread; of the file system only templates are read.
 */
public final class ProjectDocuments {
    private final Drafting drafting;
    private final FontShelf fonts;
    private final PaperSize paper;

    /**
     * Documents about one state of a project, with fonts of their own.
     *
     * @param view answers about the same definition the project's files hold
     * @param folder the project's folder; templates in its folder {@code templates} go before our own
     */
    public ProjectDocuments(View view, ProjectFiles project, Path folder, Reader reader) {
        this(view, project, folder, reader, new FontShelf());
    }

    /**
     * Documents about one state of a project.
     *
     * @param fonts kept from state to state, since reading them takes longer than laying out a document
     */
    public ProjectDocuments(View view, ProjectFiles project, Path folder, Reader reader, FontShelf fonts) {
        this(view, project, folder, reader, fonts, PaperSize.A4);
    }

    /** Documents as above, on a paper; those above print on A4. */
    public ProjectDocuments(
            View view, ProjectFiles project, Path folder, Reader reader, FontShelf fonts, PaperSize paper) {
        this.drafting = new Drafting(view, project, new TemplateShelf(folder), reader, BikeChoice.ALL);
        this.fonts = fonts;
        this.paper = paper;
    }

    private ProjectDocuments(Drafting drafting, FontShelf fonts, PaperSize paper) {
        this.drafting = drafting;
        this.fonts = fonts;
        this.paper = paper;
    }

    /** The same documents about some bikes only; their files are named after the bikes, {@code fit-B-004.pdf}. */
    public ProjectDocuments about(BikeChoice bikes) {
        Drafting narrowed =
                new Drafting(drafting.view(), drafting.project(), drafting.shelf(), drafting.reader(), bikes);
        return new ProjectDocuments(narrowed, fonts, paper);
    }

    /** The documents every project has, by the names they are asked for. */
    public static List<String> names() {
        return TemplateShelf.NAMES;
    }

    /**
     * The documents this project has: {@link #names()}, then one for each further template in its folder
     * {@code templates}. Reads the folder.
     */
    public List<String> available() {
        return drafting.shelf().available();
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
    record Made(String name, Map<Format, byte[]> files) {}

    /**
     * Writes documents in every format.
     *
     * @param names which, each of {@link #available()}
     * @param date the date they carry; the project's own where nothing is said
     * @param out the folder to write to; it is made if need be
     */
    public Outcome write(List<String> names, Optional<LocalDate> date, Path out) {
        return write(names, date, out, EnumSet.allOf(Format.class));
    }

    /** Writes documents as above, in some formats only; files of other formats stay as they are. */
    public Outcome write(List<String> names, Optional<LocalDate> date, Path out, Set<Format> formats) {
        Optional<LocalDate> day = drafting.day(date);
        if (day.isEmpty()) {
            return new Outcome(
                    List.of(),
                    List.of(
                            "project.json: project, date: is missing, and documents carry a date; add it or give --date."),
                    List.of());
        }
        List<String> problems = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        List<Made> made = new ArrayList<>();
        for (String name : names) {
            Draft draft = drafting.draft(name, day.get());
            if (draft instanceof Draft.Refused refused) {
                refused.obstacles().stream().map(Obstacle::sentence).forEach(problems::add);
            } else if (draft instanceof Draft.Filled filled) {
                warnings.addAll(filled.warnings());
                made.add(new Made(drafting.bikes().fileName(name), files(name, filled.tree(), formats, warnings)));
            }
        }
        return problems.isEmpty() ? new Writing(out).write(made, warnings) : new Outcome(List.of(), problems, warnings);
    }

    private Map<Format, byte[]> files(String name, DocumentTree document, Set<Format> formats, List<String> warnings) {
        Map<Format, byte[]> files = new EnumMap<>(Format.class);
        if (formats.contains(Format.MARKDOWN)) {
            files.put(Format.MARKDOWN, new MarkdownRenderer().render(document).getBytes(StandardCharsets.UTF_8));
        }
        if (formats.contains(Format.HTML)) {
            files.put(Format.HTML, new HtmlRenderer(fonts).render(document).getBytes(StandardCharsets.UTF_8));
        }
        if (formats.contains(Format.PDF)) {
            RenderedPdf rendered = new PdfRenderer(fonts, paper).render(document);
            rendered.warnings().forEach(warning -> warnings.add(name + ": " + warning));
            files.put(Format.PDF, rendered.bytes());
        }
        return files;
    }

    /**
     * A document as it will print. Its pages are those of the PDF that {@link #write} would write now. Cost: filling the
     * template asks for the workings of every number in it; laying out grows with the text.
     *
     * @param name one of {@link #available()}
     * @param date the date it carries; the project's own where nothing is said
     */
    public Preview preview(String name, Optional<LocalDate> date) {
        Draft draft = draft(name, date);
        return draft instanceof Draft.Filled filled
                ? new Preview.Ready(PaintedDocument.of(filled.tree(), fonts, paper), filled.asks())
                : new Preview.Refused(((Draft.Refused) draft).obstacles());
    }

    /**
     * The numbers of a document, for telling how many of them changed. Cost: that of filling the template, which asks for
     * the workings of every number in it; no page is laid out.
     *
     * @param name one of {@link #available()}
     */
    public Numbers numbers(String name) {
        Draft draft = drafting.draft(name, LocalDate.EPOCH); // no number depends on the date
        return draft instanceof Draft.Filled filled
                ? new Numbers.Read(filled.tree().trace(), filled.asks())
                : new Numbers.Refused(((Draft.Refused) draft).obstacles());
    }

    private Draft draft(String name, Optional<LocalDate> date) {
        return drafting.day(date)
                .map(day -> drafting.draft(name, day))
                .orElseGet(
                        () -> new Draft.Refused(
                                List.of(
                                        Obstacle.of(
                                                "project.json: project, date: is missing, and documents carry a date; add the project's date."))));
    }
}
