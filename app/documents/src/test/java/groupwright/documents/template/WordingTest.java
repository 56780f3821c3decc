package groupwright.documents.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.sample.Sample;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.commonmark.node.Document;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A template in one language, its words in another. */
class WordingTest {
    private static final Path BUNDLED = Path.of("..", "..", "templates");

    private static WordingCatalogue catalogue(String text) {
        return WordingCatalogue.read(new Template("templates/words.de.md", text));
    }

    private static List<String> problems(String text) {
        return catalogue(text).problems().stream().map(Problem::sentence).toList();
    }

    private static Expansion build(String template, String... catalogues) {
        List<WordingCatalogue> read =
                Stream.of(catalogues).map(WordingTest::catalogue).toList();
        read.forEach(one -> assertEquals(List.of(), one.problems()));
        return new DocumentBuilder()
                .build(
                        new Template("brief.md", template),
                        Wording.of(Locale.GERMAN, "templates/words.de.md", read),
                        Sample.tarnbeck(),
                        Sample.issue());
    }

    private static String markdown(String template, String... catalogues) {
        String whole = new MarkdownRenderer()
                .render(assertInstanceOf(Expansion.Complete.class, build(template, catalogues))
                        .document())
                .replaceAll("<a id=\"[^\"]*\"></a>", "");
        String afterTitle = whole.substring(whole.indexOf("3f9a1c77d2e04b5586ab90cd") + 24);
        return afterTitle.split("(?m)^#+ [^\n]*Where the numbers come from")[0].strip();
    }

    @Test
    void everyLeafBlockIsTranslatedWhereverItStands() {
        String template = """
                # One

                Setext *two*
                ============

                Three goes
                over two lines.

                - four
                  - five

                > six

                | seven | b |
                |-------|---|
                | eight | c |
                """;
        String words = """
                > One

                Eins

                > Setext *two*

                **Zwei**

                > Three goes over
                > two lines.

                Drei

                > four

                vier

                > five

                fünf

                > six

                sechs

                > seven

                sieben

                > eight

                acht
                """;
        assertEquals(
                """
                # 1 Eins

                # 2 **Zwei**

                Drei

                - vier
                  - fünf

                > sechs

                | sieben | b |
                | :-- | :-- |
                | acht | c |""".replaceAll("\\| :?-+ \\| :?-+ \\|", "|"),
                markdown(template, words).replaceAll("\\|[ :-]+\\|[ :-]+\\|", "|"));
    }

    @Test
    void placeholdersAreFilledInTheOrderOfTheOtherLanguage() {
        String template = "From {{ gear-range lead }} to {{ largest-step lead from-teeth=14 }}.\n";
        String words = "> From {{ gear-range lead }} to {{ largest-step lead from-teeth=14 }}.\n\n"
                + "Bis {{ largest-step lead from-teeth=14 }} von {{ gear-range lead }}.\n";
        String english = markdown(template);
        String german = markdown(template, words);
        assertTrue(german.startsWith("Bis "), german);
        assertTrue(english.startsWith("From "), english);
    }

    @Test
    void captionsAreTranslated() {
        String template = "```requirements\nWhat *we* ask\n```\n";
        assertTrue(markdown(template, "> What *we* ask\n\nWas *wir* fordern\n").contains("Was *wir* fordern"));
    }

    @Test
    void theFirstCatalogueGoesBeforeTheNext() {
        assertEquals("eigene", markdown("own\n", "> own\n\neigene\n", "> own\n\nunsere\n"));
    }

    @Test
    void whatIsWrongInTheWordsIsToldWhereTheWordsAre() {
        String template = "fine\n\nSee {{ gear-rage C-002 }}.\n";
        String words = "> See {{ gear-rage C-002 }}.\n\nSiehe\n<b>{{ gear-rage C-002 }}</b>.\n";
        Expansion.Refused refused = assertInstanceOf(Expansion.Refused.class, build(template, words));
        assertEquals(
                List.of("templates/words.de.md:4:1", "templates/words.de.md:4:4", "templates/words.de.md:4:25"),
                refused.problems().stream()
                        .map(problem -> problem.template() + ":" + problem.line() + ":" + problem.column())
                        .toList());
    }

    @Test
    void blocksWithoutWordsAreToldInOneSentence() {
        String template = "known\n\n{{ gear-range lead }}\n\nthis\n\n# that\n\n14\n";
        Expansion.Complete complete = assertInstanceOf(Expansion.Complete.class, build(template, "> known\n\nja\n"));
        assertEquals(
                List.of("2 blocks have no German words in templates/words.de.md, first at line 5"),
                complete.warnings());
        assertEquals(
                List.of("1 block has no German words in templates/words.de.md, first at line 1"),
                assertInstanceOf(Expansion.Complete.class, build("known\n")).warnings());
    }

    @Test
    void aTemplateWithoutWordingIsNotWarnedOf() {
        Expansion expansion =
                new DocumentBuilder().build(new Template("brief.md", "known\n"), Sample.tarnbeck(), Sample.issue());
        assertEquals(
                List.of(), assertInstanceOf(Expansion.Complete.class, expansion).warnings());
    }

    @Test
    void placeholdersMustBeTheSame() {
        assertEquals(
                List.of("templates/words.de.md:3:1: the words have {{ b 1 }}, the original has {{ a }};"
                        + " use the same placeholders."),
                problems("> One {{ a }}\n\nEins {{  b   1 }}\n"));
        assertEquals(List.of(), problems("> {{ a }} {{ a }} {{b}}\n\n{{ b }} {{a}}\n"));
    }

    @Test
    void aQuoteWithoutWordsAndWordsWithoutAQuoteAreProblems() {
        String pair = "write one quote with the original, then one paragraph with its words.";
        assertEquals(
                List.of(
                        "templates/words.de.md:3:1: this quote has no words behind it; " + pair,
                        "templates/words.de.md:11:1: this belongs to no quote; " + pair,
                        "templates/words.de.md:13:1: the original is not one paragraph; give a heading without its #,"
                                + " a list item without its sign."),
                problems("Explained.\n\n> One\n\n# Heading\n\n> Two\n\nZwei\n\nDrei\n\n> # Four\n\nVier\n"));
    }

    @Test
    void theSameOriginalTwiceIsAProblem() {
        assertEquals(
                List.of("templates/words.de.md:5:1: the same original stands above line 3 already; keep one of them."),
                problems("> One\n\nEins\n\n> One\n\nein\n"));
    }

    @Test
    void hostileFilesAreRefusedNotFollowed() {
        assertFalse(problems("> ".repeat(200) + "deep\n\nwords\n").isEmpty());
        assertFalse(problems("x".repeat(1024 * 1024 + 1)).isEmpty());
    }

    static List<Path> bundledTemplates() throws IOException {
        try (Stream<Path> files = Files.list(BUNDLED)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .filter(file -> !file.getFileName().toString().startsWith("words."))
                    .filter(file -> !file.getFileName().toString().equals("README.md"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("bundledTemplates")
    void everyBlockOfABundledTemplateHasGermanWords(Path file) throws IOException {
        WordingCatalogue words =
                WordingCatalogue.read(new Template("words.de.md", Files.readString(BUNDLED.resolve("words.de.md"))));
        assertEquals(List.of(), words.problems().stream().map(Problem::sentence).toList());
        Wording wording = Wording.of(Locale.GERMAN, "words.de.md", List.of(words));
        Translation translation = new Translation(wording, TemplateParser.of(Limits.STANDARD));
        translate(Files.readString(file), Origin.ofTemplate(file.getFileName().toString()), translation);
        assertEquals(Optional.empty(), translation.warning());
    }

    private static void translate(String markdown, Origin origin, Translation translation) {
        Document root = TemplateParser.parse(markdown, Limits.STANDARD);
        translation.translate(root, markdown, origin);
        for (Node node : TemplateNodes.of(root)) {
            if (node instanceof FencedCodeBlock fence) {
                translate(fence.getLiteral(), origin.ofBody(fence), translation);
            }
        }
    }
}
