package groupwright.documents.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Content;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.sample.Sample;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DocumentBuilderTest {
    private static List<Problem> problems(String template, Content content) {
        Expansion expansion = new DocumentBuilder().build(new Template("brief.md", template), content, Sample.issue());
        return assertInstanceOf(Expansion.Refused.class, expansion).problems();
    }

    private static List<String> sentences(String template) {
        return problems(template, Sample.tarnbeck()).stream()
                .map(Problem::sentence)
                .toList();
    }

    private static String body(String template, Content content) {
        String whole = new MarkdownRenderer().render(Sample.document(template, content));
        String afterTitle = whole.substring(whole.indexOf("3f9a1c77d2e04b5586ab90cd") + 24);
        return afterTitle
                .substring(0, afterTitle.indexOf("# Annex A: Where the numbers come from"))
                .strip();
    }

    @Test
    void everyProblemIsReportedWithLineAndColumn() {
        String template = """
                # {{ gear-rage lead }}

                Some text, then {{ gear-range C-009 }}
                and *{{ largest-step lead
                from-teeth=14 }}* and {{ }}.

                | a | b |
                |---|---|
                | 1 | {{ projectname }} |

                ```requirments
                ```
                """;
        assertEquals(
                List.of(
                        "brief.md:1:3: nothing is called \"gear-rage\"; did you mean \"gear-range\"?",
                        "brief.md:3:17: there is no answer to \"gear-range C-009\"; ask for C-002.",
                        "brief.md:4:6: \"{{\" is not closed by \"}}\" on the same line or in the same table cell;"
                                + " close it, or write \"\\{{\" for two braces.",
                        "brief.md:5:23: nothing stands between \"{{\" and \"}}\"; write what to show, for example"
                                + " {{ gear-range lead }}.",
                        "brief.md:9:7: nothing is called \"projectname\"; did you mean \"project.name\"?",
                        "brief.md:11:1: no block is called \"requirments\"; did you mean \"requirements\"?"),
                sentences(template));
    }

    @Test
    void blankLinesInARepeatedSectionAreCounted() {
        assertEquals(
                List.of("brief.md:5:1: nothing is called \"idd\"; did you mean \"id\"?"),
                sentences("```needs\n\ntext\n\n{{ idd }}\n```\n"));
    }

    @Test
    void problemsInARepeatedSectionPointIntoTheTemplateAndAreSaidOnce() {
        String template = """
                - item

                  ````needs
                  text
                  **{{ idd }}**
                  ````
                """;
        assertEquals(List.of("brief.md:5:5: nothing is called \"idd\"; did you mean \"id\"?"), sentences(template));
    }

    @Test
    void problemsInACaptionPointIntoTheTemplate() {
        assertEquals(
                List.of("brief.md:4:4: nothing is called \"leed\"; did you mean \"lead\"?"),
                sentences("x\n\n```gears\nOf {{ leed }}\n```\n"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>x</script>",
                "a <b>c</b>",
                "![p](http://x.example/p.png)",
                "[a](javascript:x)",
                "[a](file:///etc/passwd)",
                "[a](../secret)"
            })
    void rawHtmlPicturesAndOddLinksAreNotAllowed(String template) {
        assertEquals(
                Problem.Kind.NOT_ALLOWED,
                problems(template, Sample.tarnbeck()).get(0).kind());
    }

    @Test
    void commentsAreLeftOut() {
        assertEquals("a b", body("<!-- why -->\n\na<!-- note --> b\n", Sample.empty()));
    }

    @Test
    void starsInsidePlaceholdersAreNoEmphasisAndBackslashAndCodeKeepBraces() {
        Sample content = Sample.empty().with("a*b*c_d_", TextAnswer.of(new Inline.Plain("filled")));
        assertEquals("filled, `{{ x }}`, \\{{ y }}", body("{{ a*b*c_d_ }}, `{{ x }}`, \\{{ y }}", content));
    }

    @Test
    void recordTextIsNeverExpandedAgain() {
        Sample content = Sample.empty()
                .with("a", TextAnswer.of(new Inline.Plain("{{ b }} **x**")))
                .with("b", TextAnswer.of(new Inline.Plain("WRONG")));
        assertEquals("\\{{ b }} \\*\\*x\\*\\*", body("{{ a }}", content));
    }

    @Test
    void controlAndDirectionSignsOfRecordsBecomeVisible() {
        Sample content = Sample.empty().with("a", TextAnswer.of(new Inline.Plain("x\u0000\u202Ey\r\n\tz\uD800")));
        assertEquals("x\\[U+0000\\]\\[U+202E\\]y z\\[U+D800\\]", body("{{ a }}", content));
    }

    @Test
    void aTemplateOfMoreThanAMebibyteIsRefused() {
        String fits = "x".repeat(1024 * 1024);
        assertInstanceOf(
                Expansion.Complete.class,
                new DocumentBuilder().build(new Template("t", fits), Sample.empty(), Sample.issue()));
        Problem problem = problems("é".repeat(1024 * 512) + "x", Sample.empty()).get(0);
        assertEquals(Problem.Kind.TOO_MUCH, problem.kind());
        assertTrue(problem.wrong().contains("1048577 bytes"), problem.wrong());
    }

    @Test
    void moreBlocksThanPermittedAreRefusedOnce() {
        List<List<Phrase>> rows = Collections.nCopies(60_000, List.of(Phrase.of("x")));
        Sample content = Sample.empty().with("big", new BlockAnswer.Table(List.of(Column.text("a")), rows));
        List<Problem> problems = problems("```big\n```\n\ntext\n\n```big\n```\n\n```big\n```\n", content);
        assertEquals(1, problems.size());
        assertEquals(Problem.Kind.TOO_MUCH, problems.get(0).kind());
        assertEquals(6, problems.get(0).line());
    }

    @ParameterizedTest
    @ValueSource(strings = {">", "+ ", "*a **b ", "1. ", "[", "{{", "![", "`", "<"})
    void deepOrPathologicalTemplatesEndWithAnAnswer(String part) {
        String template = part.repeat(100_000 / part.length());
        Expansion expansion = new DocumentBuilder().build(new Template("t", template), Sample.empty(), Sample.issue());
        if (part.equals(">") || part.equals("+ ")) {
            Problem problem = assertInstanceOf(Expansion.Refused.class, expansion)
                    .problems()
                    .get(0);
            assertEquals(Problem.Kind.TOO_MUCH, problem.kind());
        } else if (expansion instanceof Expansion.Complete complete) {
            assertTrue(new MarkdownRenderer().render(complete.document()).endsWith("\n"));
        }
    }

    @ParameterizedTest
    @CsvSource({"'**a ', '**'", "'[', '](#x)'", "'*a _b ', '_*'"})
    void emphasisAndLinksNestedThousandsDeepAreRefusedOrPlain(String open, String close) {
        String template = open.repeat(20_000) + "x" + close.repeat(20_000);
        Expansion expansion = new DocumentBuilder().build(new Template("t", template), Sample.empty(), Sample.issue());
        if (expansion instanceof Expansion.Complete complete) {
            assertTrue(new MarkdownRenderer().render(complete.document()).endsWith("\n"));
        } else {
            assertEquals(
                    Problem.Kind.TOO_MUCH,
                    ((Expansion.Refused) expansion).problems().get(0).kind());
        }
    }

    @Test
    void textsThatMeetAreOneAndNothingAfterThemIsLost() {
        Sample content = Sample.empty().with("a", TextAnswer.of(new Inline.Plain("1"), new Inline.Plain(". ")));
        assertEquals("1\\. x1. *e* 1. y", body("{{ a }}x{{ a }}*e* {{ a }}y", content));
    }

    @Test
    void sectionsRepeatThreeLevelsDeepAndNoDeeper() {
        Sample content = Sample.empty().with("leaf", TextAnswer.of(new Inline.Plain("leaf")));
        for (int level = 4; level >= 1; level--) {
            content = content.with("level" + level, new BlockAnswer.Repeated(List.of(content, content)));
        }
        String three = "~~~~~~level1\n~~~~~level2\n~~~~level3\n{{ leaf }}\n~~~~\n~~~~~\n~~~~~~\n";
        assertEquals(8, body(three, content).split("leaf", -1).length - 1);
        String four = "~~~~~~level1\n~~~~~level2\n~~~~level3\n~~~level4\n{{ leaf }}\n~~~\n~~~~\n~~~~~\n~~~~~~\n";
        List<Problem> problems = problems(four, content);
        assertEquals(1, problems.size());
        assertEquals(4, problems.get(0).line());
    }
}
