package groupwright.documents.template;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.sample.Sample;
import java.util.List;
import org.junit.jupiter.api.Test;

class NumberingTest {
    private static final Sample CONTENT = Sample.empty()
            .with("t", new BlockAnswer.Table(List.of(Column.text("a")), List.of(List.of(Phrase.of("x")))))
            .with("x", TextAnswer.of(new Inline.Plain("7 speeds")));

    /** Headings and captions of a template, without title and annex. */
    private static List<String> numbered(String template) {
        return new MarkdownRenderer()
                .render(Sample.document(template, CONTENT))
                .lines()
                .skip(1)
                .filter(line -> line.matches(" *(#|>? ?#|\\*\\*Table).*"))
                .filter(line -> !line.contains("Annex"))
                .toList();
    }

    @Test
    void threeLevelsAreNumberedAndStartAnew() {
        assertEquals(
                List.of(
                        "# 1 A",
                        "## 1.1 B",
                        "### 1.1.1 C",
                        "#### D",
                        "### 1.1.2 E",
                        "## 1.2 F",
                        "### 1.2.1 G",
                        "# 2 H",
                        "## 2.1 I"),
                numbered("# A\n## B\n### C\n#### D\n### E\n## F\n### G\n# H\n## I\n"));
    }

    @Test
    void aHeadingWithoutANumberAboveItGetsNone() {
        assertEquals(List.of("## A", "# 1 B", "### C"), numbered("## A\n# B\n### C\n"));
    }

    @Test
    void aTypedNumberStaysAndTheCountGoesOnFromIt() {
        assertEquals(
                List.of("# 4 A", "## 4.1 B", "## 4.7 C", "## 4.8 D", "# 5 E"),
                numbered("# 4 A\n## B\n## 4.7 C\n## D\n# E\n"));
        assertEquals(List.of("# 1 A", "# 2026", "# 3 B"), numbered("# A\n# 2026\n# B\n"), "a year is no count");
    }

    @Test
    void numbersAreThroughQuotesAndMarkup() {
        assertEquals(List.of("# 1 *A*", "> # B", "# 2 `C`"), numbered("# *A*\n\n> # B\n\n# `C`\n"));
    }

    @Test
    void captionsAreCountedByChapter() {
        String table = "\n```t\nwords\n```\n\n";
        assertEquals(
                List.of(
                        "**Table 1** words",
                        "# 1 A",
                        "**Table 1-1** words",
                        "**Table 1-2** words",
                        "# 2 B",
                        "**Table 2-1** words"),
                numbered(table + "# A\n" + table + table + "# B\n" + table));
        assertEquals(List.of("**Table 1** words", "## A", "**Table 2** words"), numbered(table + "## A\n" + table));
    }
}
