package groupwright.documents.markdown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.sample.Sample;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MarkdownRendererTest {
    private static final Path GOLDEN = Path.of("src/test/resources/groupwright/documents/markdown/specification.md");
    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    private static String render(String template, Sample content) {
        return new MarkdownRenderer().render(Sample.document(template, content));
    }

    /** Write it anew, on purpose only, with {@code mvn -pl app/documents -am test -Dgolden.write=true}. */
    @Test
    void theSpecificationReadsAsRecorded() throws IOException {
        String rendered = render(Sample.TEMPLATE, Sample.tarnbeck());
        if (Boolean.getBoolean("golden.write")) {
            Files.createDirectories(GOLDEN.getParent());
            Files.writeString(GOLDEN, rendered);
        }
        assertEquals(Files.readString(GOLDEN, StandardCharsets.UTF_8), rendered);
    }

    @Test
    void everyLinkFromANumberAndBackLeadsToOneAnchor() {
        String rendered = render(Sample.TEMPLATE, Sample.tarnbeck());
        List<String> anchors = all("<a id=\"([^\"]+)\">", rendered);
        assertEquals(anchors.size(), new TreeSet<>(anchors).size(), "an anchor stands twice");
        List<String> links = all("\\]\\(#([^)]+)\\)", rendered);
        assertEquals(new TreeSet<>(anchors), new TreeSet<>(links));
    }

    private static List<String> all(String pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a|b",
                "a\\|b",
                "\\",
                "*x*",
                "**x**",
                "__x__",
                "[x](y)",
                "![x](y)",
                "{{gear-range}}",
                "<script>alert(1)</script>",
                "<!-- x",
                "&lt;b&gt; &#32;",
                "`code`",
                "``",
                "~~x~~",
                "$x$",
                "https://x.example/a_b",
                "www.x.example",
                "a@x.example",
                ":smile:",
                "# x",
                "- x",
                "+ x",
                "1. x",
                "1) x",
                "> x",
                "===",
                "---",
                "| a | b |",
                "[x]: y",
                "\"quoted\"",
                "x\\",
                "x!",
                "<a id=\"n1\"></a>",
                "[^1]",
                "- [ ] x",
                "#"
            })
    void hostileTextComesBackFromCellsParagraphsListsAndHeadings(String text) {
        assertComesBack(text);
    }

    /** Common viewers know more signs than the parser used here: struck text, formulas, links and mail without brackets. */
    @Test
    void signsOfCommonViewersAreEscapedToo() {
        Sample content =
                Sample.empty().with("x", TextAnswer.of(new Inline.Plain("~~a~~ $b$ https://c www.d e@f :g: {{h}}")));
        assertTrue(
                render("{{ x }}", content)
                        .contains("\n\n\\~\\~a\\~\\~ \\$b\\$ https\\://c www\\.d e\\@f \\:g: \\{{h}}\n\n"),
                render("{{ x }}", content));
    }

    @Test
    void newLinesOfRecordsBecomeSpaces() {
        assertEquals(List.of("a b c"), cells(table("a\r\nb\n\n\tc")));
    }

    @Test
    void randomTextComesBack() {
        String signs = "ab1 .-+*_`[](){}<>#!|\\&;:/\"'~$@=^?,äé…";
        for (long seed = 1; seed <= 600; seed++) {
            Random random = new Random(seed);
            StringBuilder text = new StringBuilder();
            int length = 1 + random.nextInt(12);
            for (int i = 0; i < length; i++) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            assertComesBack(text.toString(), "seed " + seed);
        }
    }

    private static void assertComesBack(String... textAndHint) {
        String expected = textAndHint[0].strip().replaceAll(" +", " ");
        String hint = String.join(", ", textAndHint);
        assertEquals(List.of(expected), cells(table(textAndHint[0])), hint);
        if (!expected.isEmpty()) {
            Sample content = Sample.empty()
                    .with("x", TextAnswer.of(new Inline.Plain(expected)))
                    .with("list", new BlockAnswer.Items(List.of(Phrase.of(expected))));
            String rendered = render("{{ x }}\n\n```list\n```\n\n#### {{ x }}\n\n{{ x }}{{ x }}\n", content);
            assertEquals(List.of(expected, expected, expected, expected + expected), bodyTexts(rendered), hint);
        }
    }

    private static String table(String text) {
        Sample content = Sample.empty()
                .with("t", new BlockAnswer.Table(List.of(Column.text("h")), List.of(List.of(Phrase.of(text)))));
        return render("```t\n```\n", content);
    }

    private static List<String> cells(String markdown) {
        List<String> cells = new ArrayList<>();
        PARSER.parse(markdown).accept(new AbstractVisitor() {
            @Override
            public void visit(CustomNode node) {
                if (node instanceof TableCell cell && !cell.isHeader()) {
                    cells.add(onlyText(cell));
                }
                visitChildren(node);
            }
        });
        return cells;
    }

    /** The texts between title block and last chapter, which must consist of text nodes only. */
    private static List<String> bodyTexts(String markdown) {
        List<String> texts = new ArrayList<>();
        Node node = PARSER.parse(markdown).getFirstChild().getNext().getNext();
        for (; node != null; node = node.getNext()) {
            Node holder = node;
            while (holder.getFirstChild() != null && !(holder.getFirstChild() instanceof Text)) {
                holder = holder.getFirstChild();
            }
            texts.add(onlyText(holder));
        }
        return texts.subList(0, texts.size() - 2);
    }

    private static String onlyText(Node holder) {
        StringBuilder text = new StringBuilder();
        for (Node child = holder.getFirstChild(); child != null; child = child.getNext()) {
            text.append(child instanceof Text plain ? plain.getLiteral() : "⟨" + child.getClass() + "⟩");
        }
        return text.toString();
    }

    @Test
    void codeWithABarStaysInItsCell() {
        String rendered = render("| a | b |\n|---|---|\n| `x\\|y` | z |\n", Sample.empty());
        assertTrue(rendered.contains("| `x\\|y` | z |"), rendered);
    }

    @Test
    void linesEndInLineFeedAndTheLastOneToo() {
        String rendered = render(Sample.TEMPLATE.replace("\n", "\r\n"), Sample.tarnbeck());
        assertEquals(render(Sample.TEMPLATE, Sample.tarnbeck()), rendered);
        assertTrue(rendered.endsWith("\n") && !rendered.contains("\r"));
    }
}
