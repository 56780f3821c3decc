package groupwright.workbench.cli;

import groupwright.definition.figure.Nearest;
import groupwright.documents.project.Format;
import groupwright.documents.project.ProjectDocuments;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the documents of a project. */
@Command(
        name = "documents",
        customSynopsis =
                "groupwright documents PROJECT [--only NAME,…] [--formats markdown,html,pdf] [--date 2026-03-09]"
                        + " [--language en|de] --out DIR [--json]",
        sortOptions = false,
        description = "Write the documents of a project, each as Markdown, HTML and PDF.")
final class DocumentsCommand implements Callable<Exit> {
    private static final List<String> LANGUAGES = List.of("en", "de");

    private final Surroundings surroundings;

    @Parameters(paramLabel = "PROJECT", description = "The folder of the project.")
    private String project;

    @Option(names = "--only", split = ",", paramLabel = "NAME,…", description = "Only these documents.")
    private List<String> only = List.of();

    @Option(
            names = "--formats",
            split = ",",
            paramLabel = "FORMAT,…",
            description = "Only these of markdown, html and pdf; all if left out.")
    private List<String> formats = List.of();

    @Option(names = "--date", paramLabel = "DATE", description = "The date they carry; the project's own if left out.")
    private String date;

    @Option(
            names = "--language",
            paramLabel = "en|de",
            defaultValue = "en",
            description = "Language of numbers, dates and fixed words.")
    private String language;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "The folder to write to.")
    private String out;

    @Mixin
    private CommonOptions options;

    DocumentsCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public Exit call() throws InterruptedException {
        DocumentsJob job = new DocumentsJob(
                names(),
                formats(),
                Optional.ofNullable(date).map(DocumentsCommand::day),
                locale(),
                surroundings.path(out));
        return OpenProject.doing(
                surroundings,
                surroundings.path(project),
                opened -> job.write(surroundings, opened, options.isForMachine()));
    }

    /** Those asked for, in the order of the shelf and each once; all where none is named. */
    private List<String> names() {
        List<String> known = ProjectDocuments.names();
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

    private Set<Format> formats() {
        Set<Format> asked = EnumSet.noneOf(Format.class);
        for (String name : formats) {
            asked.add(Format.named(name)
                    .orElseThrow(() -> Refusal.of(
                            "--formats: \"" + name + "\" is no format of the documents",
                            "write one or more of " + String.join(",", Format.names()))));
        }
        return asked.isEmpty() ? EnumSet.allOf(Format.class) : asked;
    }

    private Locale locale() {
        if (!LANGUAGES.contains(language)) {
            throw Refusal.of("--language: \"" + language + "\" is no language of the documents", "write en or de");
        }
        return Locale.forLanguageTag(language);
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException wrong) {
            throw Refusal.of(
                    "--date: \"" + text + "\" is no date", "write year, month and day, for example 2026-03-09");
        }
    }
}
