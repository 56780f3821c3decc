package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.Assessment.ClaimStanding;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figures.FigureNames;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.documents.numbers.Measures;
import groupwright.documents.numbers.Reader;
import groupwright.documents.trace.NumberedEntry;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whole documents of the sample in another language and in other measures, from the same templates. */
class GermanDocumentsTest {
    private static final Path SAMPLE = Path.of("..", "..", "samples", "tarnbeck");
    private static final Optional<LocalDate> DAY = Optional.of(LocalDate.of(2026, 3, 9));
    private static final Reader ENGLISH = new Reader(Locale.ENGLISH);
    private static final Reader GERMAN = new Reader(Locale.GERMAN);
    /** Lines that give a formula, a source, a record's field, or advice on an English statement. */
    private static final Pattern AS_PUBLISHED_OR_KEPT = Pattern.compile("(\\s*- )?(Formel|Quelle)[: ].*"
            + "|\\s*- .* \\(`[\\w.-]+`\\)"
            + "|\\| R-\\d+ \\| [^|]* \\| [^|]*: [^|]* \\|");

    @TempDir
    Path folder;

    private ProjectDocuments.Outcome write(Path project, Reader reader, String name) {
        return documents(project, reader).write(List.of(name), DAY, folder);
    }

    private static ProjectDocuments documents(Path project, Reader reader) {
        ProjectFiles files = ProjectFiles.read(project);
        return new ProjectDocuments(ledger(files), files, project, reader);
    }

    private static Ledger ledger(ProjectFiles files) {
        return new Ledger(Catalogue.ofServices(), files.definition().orElseThrow(), 1000);
    }

    private String markdown(Reader reader, String name) throws IOException {
        ProjectDocuments.Outcome outcome = write(SAMPLE, reader, name);
        assertEquals(List.of(), outcome.problems());
        assertEquals(List.of(), outcome.warnings());
        return Files.readString(folder.resolve(name + ".md"))
                .replaceAll("<a id=\"[^\"]*\"></a>", "")
                .replace("\\", "");
    }

    static List<String> names() {
        return ProjectDocuments.names();
    }

    private static Properties labels(String file) throws IOException {
        Properties properties = new Properties();
        try (InputStreamReader reader = new InputStreamReader(
                ProjectDocuments.class.getResourceAsStream("/groupwright/documents/" + file), StandardCharsets.UTF_8)) {
            properties.load(reader);
        }
        return properties;
    }

    /** All text of the sample's records, where any word may stand. */
    private static String records() throws IOException {
        try (Stream<Path> files = Files.walk(SAMPLE)) {
            StringBuilder all = new StringBuilder();
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".json")).toList()) {
                all.append(Files.readString(file)).append('\n');
            }
            return all.toString();
        }
    }

    /** English wording of labels and of figures' names that differs from the German; what has parts is cut at them. */
    private static Set<String> englishWords() throws IOException {
        Properties english = labels("labels.properties");
        Properties german = labels("labels_de.properties");
        Set<String> words = new TreeSet<>();
        for (String key : english.stringPropertyNames()) {
            for (String piece : english.getProperty(key).split("\\{\\d}")) {
                words.add(piece.replace("''", "'").strip());
            }
        }
        FigureNames names = FigureNames.in(Locale.GERMAN);
        for (Figure figure : Catalogue.ofServices().all()) {
            words.add(figure.name());
            words.add(figure.leavesOut());
            words.remove(names.of(figure));
        }
        german.values().forEach(words::remove);
        words.removeIf(word -> word.length() <= 3 || !word.matches(".*\\p{L}{4}.*"));
        return words;
    }

    @ParameterizedTest
    @MethodSource("names")
    void noEnglishWordingIsLeft(String name) throws IOException {
        String text = markdown(GERMAN, name)
                .replaceAll("(?s)(?<=\\n)(`{3,})[^`\\n]*\\n.*?\\n\\1(?=\\n)", ""); // code stays as it is
        for (ClaimStanding standing : new Assessment(ledger(ProjectFiles.read(SAMPLE))).claims()) {
            text = standing.detail().isEmpty() ? text : text.replace(standing.detail(), ""); // in English throughout
        }
        String records = records();
        Set<String> words = englishWords();
        List<String> left = new ArrayList<>();
        for (String line : text.split("\n")) {
            if (AS_PUBLISHED_OR_KEPT.matcher(line).matches()) {
                continue;
            }
            for (String word : words) {
                if (Pattern.compile("(?<![\\p{L}-])" + Pattern.quote(word) + "(?![\\p{L}-])")
                                .matcher(line)
                                .find()
                        && !records.contains(word)) {
                    left.add(word + " in: " + line);
                }
            }
        }
        assertEquals(List.of(), left);
    }

    @ParameterizedTest
    @MethodSource("names")
    void theNumbersAreThoseOfTheEnglishDocument(String name) {
        List<String> english = numbers(ENGLISH, name, '.');
        assertFalse(english.isEmpty());
        assertEquals(english, numbers(GERMAN, name, ','));
    }

    /** Each question of a document with its answer and all that went into it, read back as numbers. */
    private static List<String> numbers(Reader reader, String name, char decimal) {
        Numbers.Read read = (Numbers.Read) documents(SAMPLE, reader).numbers(name);
        return read.trace().entries().stream()
                .map(NumberedEntry::entry)
                .map(entry -> entry.id() + " = " + parsed(entry.shown().value(), decimal) + " of "
                        + entry.inputs().stream()
                                .map(input -> parsed(input.shown().value(), decimal))
                                .toList())
                .toList();
    }

    private static List<Double> parsed(String text, char decimal) {
        return Pattern.compile("[\u2212+]?\\d[\\d\u2009]*(?:[" + decimal + "]\\d+)?")
                .matcher(text.matches(".*\\p{L}{3}.*") ? "" : text)
                .results()
                .map(found -> found.group()
                        .replace("\u2009", "")
                        .replace('\u2212', '-')
                        .replace(decimal, '.'))
                .map(Double::valueOf)
                .toList();
    }

    @Test
    void decimalsHaveAComma() throws IOException {
        String english = markdown(ENGLISH, "specification");
        String german = markdown(GERMAN, "specification");
        Set<String> points = tableDecimals(english, "\\.");
        assertFalse(points.isEmpty());
        assertEquals(
                points.stream().map(text -> text.replace('.', ',')).collect(Collectors.toCollection(TreeSet::new)),
                tableDecimals(german, ","));
    }

    private static Set<String> tableDecimals(String markdown, String sign) {
        return Pattern.compile("\\| ([\u2212+]?\\d[\\d\u2009]*" + sign + "\\d+) (?=\\|)")
                .matcher(markdown)
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void theGermanPdfSaysItsLanguageAndReadsBackItsUmlauts() throws IOException {
        write(SAMPLE, GERMAN, "specification");
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("specification.pdf").toFile())) {
            assertEquals("de", pdf.getDocumentCatalog().getLanguage());
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            for (String words : List.of(
                    "9. März 2026",
                    "Führendes Konzept",
                    "Größter Sprung",
                    "Kettenblätter",
                    "Zähne",
                    "höchstens",
                    "„")) {
                assertTrue(text.contains(words), words);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void imperialMeasuresChangeUnitsAndNoVerdict(String name) throws IOException {
        String metric = markdown(ENGLISH, name);
        String imperial = markdown(new Reader(Locale.ENGLISH, Measures.IMPERIAL), name);
        Pattern verdicts =
                Pattern.compile("meets, too close to call|misses, too close to call|meets|misses|missing input");
        assertEquals(
                verdicts.matcher(metric).results().map(MatchResult::group).toList(),
                verdicts.matcher(imperial).results().map(MatchResult::group).toList());
        if (name.equals("specification")) {
            for (String words : List.of(
                    "Chainstay, in",
                    "Basic weight, oz",
                    "Rider, bike and luggage, lb",
                    "\u202Fmph",
                    "\u202Fft",
                    "feet per crank turn",
                    "Gear 1, ft",
                    "1 in = 25.4 mm")) {
                assertTrue(imperial.contains(words), words);
                assertFalse(metric.contains(words), words);
            }
            assertFalse(imperial.contains("Chainstay, mm"));
        }
    }

    @Test
    void aProjectsOwnWordsGoBeforeOursAndWhatIsMissingIsTold() throws IOException {
        Path project = folder.resolve("project");
        try (Stream<Path> all = Files.walk(SAMPLE)) {
            for (Path file : all.toList()) {
                Path target = project.resolve(SAMPLE.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        }
        Files.createDirectories(project.resolve("templates"));
        Files.writeString(project.resolve("templates/claims.md"), "# What may be said\n\nOurs alone.\n\nThis too.\n");
        Path words = project.resolve("templates/words.de.md");
        Files.writeString(words, "> What may be said\n\nUnsere Worte\n");
        ProjectDocuments.Outcome outcome = write(project, GERMAN, "claims");
        assertEquals(
                List.of("templates/claims.md: 2 blocks have no German words in templates/words.de.md,"
                        + " first at line 3."),
                outcome.warnings());
        assertTrue(Files.readString(folder.resolve("claims.md")).contains("# 1 Unsere Worte"));

        Files.writeString(words, "> What may be said {{ gear-range lead }}\n\nUnsere Worte\n");
        assertEquals(
                List.of("templates/words.de.md:3:1: the words have no placeholder, the original has"
                        + " {{ gear-range lead }}; use the same placeholders."),
                write(project, GERMAN, "claims").problems());
        assertEquals(List.of(), write(project, ENGLISH, "claims").problems());

        Files.write(words, new byte[] {(byte) 0xff});
        assertEquals(
                List.of("templates/words.de.md: is not UTF-8; save it as UTF-8."),
                write(project, GERMAN, "claims").problems());
        Files.delete(words);
        Files.createSymbolicLink(words, SAMPLE.resolve("project.json").toAbsolutePath());
        assertEquals(
                List.of("templates/words.de.md: is a link or lies behind one; copy the file itself there."),
                write(project, GERMAN, "claims").problems());
        Files.delete(words);
    }
}
