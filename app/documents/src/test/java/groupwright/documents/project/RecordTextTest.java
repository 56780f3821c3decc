package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.documents.markdown.MarkdownRenderer;
import groupwright.documents.pages.FontShelf;
import groupwright.documents.pages.PdfRenderer;
import groupwright.documents.tree.DocumentTree;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What records hold comes out of loops as it was written, whatever it looks like. */
class RecordTextTest {
    private static final Definition SAMPLE = Bench.sampleDefinition();
    private static final FontShelf FONTS = new FontShelf();
    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();

    /** A text field of each kind of record in the sample. */
    private static final Map<String, Address> FIELDS = new TreeMap<>(Map.ofEntries(
            Map.entry("rider.title", address("G-001", "title")),
            Map.entry("need.words", address("N-001", "words")),
            Map.entry("requirement.statement", address("R-001", "statement")),
            Map.entry("concept.title", address("C-001", "title")),
            Map.entry("bike.title", address("B-001", "title")),
            Map.entry("part.title", address("P-001", "title")),
            Map.entry("line.title", address("L-001", "title")),
            Map.entry("claim.basis", address("K-001", "basis")),
            Map.entry("decision.title", address("D-001", "title")),
            Map.entry("yardstick.title", address("Y-001", "title")),
            Map.entry("milestone.title", address("M-001", "title"))));

    private static Address address(String record, String field) {
        return Address.of(new RecordId(record), field);
    }

    private static DocumentTree document(String text) {
        Definition definition = SAMPLE;
        StringBuilder template = new StringBuilder();
        for (Map.Entry<String, Address> field : FIELDS.entrySet()) {
            definition = definition.with(field.getValue(), Optional.of(text));
            String kind = field.getKey().substring(0, field.getKey().indexOf('.'));
            String shown = "{{ " + field.getKey() + " }}";
            template.append("```each ")
                    .append(kind)
                    .append(" id=")
                    .append(field.getValue().record());
            template.append("\n")
                    .append(shown)
                    .append("\n\n- ")
                    .append(shown)
                    .append("\n\n#### ")
                    .append(shown);
            template.append("\n\n| a | b |\n|---|---|\n| ")
                    .append(shown)
                    .append(" | ")
                    .append(shown);
            template.append(" |\n```\n\n");
        }
        return Bench.of(definition).document(template.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{{ gear-range lead }}",
                "{{ rider.title }} and {{",
                "```each rider",
                "~~~ riders",
                "```",
                "<b>bold</b> <script>x</script>",
                "<!-- gone -->",
                "| a | b |",
                "|---|---|",
                "# no heading",
                "- no item",
                "1. no item",
                "> no quote",
                "**x** _y_ `z` [a](http://b) ![c](d)",
                "\\{{ x }}",
                "&amp; &#123;"
            })
    void itComesOutAsWritten(String text) throws IOException {
        DocumentTree document = document(text);
        List<String> shown = texts(new MarkdownRenderer().render(document));
        assertEquals(5L * FIELDS.size(), shown.stream().filter(text::equals).count(), shown.toString());
        try (PDDocument pdf =
                Loader.loadPDF(new PdfRenderer(FONTS).render(document).bytes())) {
            String pages = new PDFTextStripper().getText(pdf).replaceAll("\\s+", "");
            int times = pages.split(java.util.regex.Pattern.quote(text.replaceAll("\\s+", "")), -1).length - 1;
            assertTrue(times >= 5 * FIELDS.size(), times + " times " + text);
        }
    }

    /** All paragraphs, headings and cells that consist of text alone. */
    private static List<String> texts(String markdown) {
        List<String> found = new ArrayList<>();
        PARSER.parse(markdown).accept(new AbstractVisitor() {
            @Override
            public void visit(Paragraph paragraph) {
                found.add(text(paragraph));
            }

            @Override
            public void visit(Heading heading) {
                found.add(text(heading));
            }

            @Override
            public void visit(CustomNode node) {
                if (node instanceof TableCell cell) {
                    found.add(text(cell));
                }
                visitChildren(node);
            }
        });
        return found;
    }

    private static String text(Node holder) {
        StringBuilder text = new StringBuilder();
        for (Node child = holder.getFirstChild(); child != null; child = child.getNext()) {
            text.append(child instanceof Text plain ? plain.getLiteral() : "⟨" + child.getClass() + "⟩");
        }
        return text.toString();
    }
}
