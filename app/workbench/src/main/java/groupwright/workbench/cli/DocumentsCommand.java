package groupwright.workbench.cli;

import groupwright.documents.numbers.Measures;
import groupwright.documents.numbers.Reader;
import groupwright.documents.pages.PaperSize;
import groupwright.documents.project.Format;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
                "groupwright documents PROJECT [--only NAME,…] [--bike B-001,…] [--formats markdown,html,pdf] [--date 2026-03-09]"
                        + " [--language en|de] [--measures metric|imperial] [--paper a4|letter] --out DIR [--json]",
        sortOptions = false,
        description = "Write the documents of a project, each as Markdown, HTML and PDF.")
final class DocumentsCommand implements Callable<Exit> {
    private static final List<String> LANGUAGES = List.of("en", "de");

    private static final Map<String, Measures> MEASURES =
            Map.of("metric", Measures.METRIC, "imperial", Measures.IMPERIAL);

    private final Surroundings surroundings;

    @Parameters(paramLabel = "PROJECT", description = "The folder of the project.")
    private String project;

    @Option(names = "--only", split = ",", paramLabel = "NAME,…", description = "Only these documents.")
    private List<String> only = List.of();

    @Option(
            names = "--bike",
            split = ",",
            paramLabel = "B-001,…",
            description = "Lists and loops of bikes hold only these; all in use if left out.")
    private List<String> bikes = List.of();

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

    @Option(
            names = "--measures",
            paramLabel = "metric|imperial",
            defaultValue = "metric",
            description = "Units of computed numbers; what goes into them stays as it is kept.")
    private String measures;

    @Option(
            names = "--paper",
            paramLabel = "a4|letter",
            defaultValue = "a4",
            description = "Paper of the PDF, A4 or US Letter.")
    private String paper;

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
                only,
                bikes,
                formats(),
                Optional.ofNullable(date).map(DocumentsCommand::day),
                reader(),
                paper(),
                surroundings.path(out));
        return OpenProject.doing(
                surroundings,
                surroundings.path(project),
                opened -> job.write(surroundings, opened, options.isForMachine()));
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

    private Reader reader() {
        return new Reader(
                locale(),
                Optional.ofNullable(MEASURES.get(measures))
                        .orElseThrow(() -> Refusal.of(
                                "--measures: \"" + measures + "\" is no system of measures",
                                "write metric or imperial")));
    }

    private PaperSize paper() {
        return switch (paper) {
            case "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default ->
                throw Refusal.of("--paper: \"" + paper + "\" is no paper of the documents", "write a4 or letter");
        };
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
