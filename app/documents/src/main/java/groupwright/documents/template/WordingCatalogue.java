package groupwright.documents.template;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;

/**
 * A file of words for the blocks of templates: block quotes with a block's source text as it stands in the template, each
 * followed by one paragraph, the same in the other language. Headings order the file, comments explain it, and so do
 * paragraphs before the first quote.
 */
public final class WordingCatalogue {
    private static final String NO_PAIR = "write one quote with the original, then one paragraph with its words";

    private final Template file;
    private final Problems problems;
    private final Map<String, Wording.Words> words = new HashMap<>(); // looked up only

    private WordingCatalogue(Template file) {
        this.file = file;
        this.problems = new Problems(file.name());
    }

    /**
     * Reads a file. Cost grows with its length.
     *
     * @param file named as problems shall name it
     * @return what is understood of it; what is not is among {@link #problems()}
     */
    public static WordingCatalogue read(Template file) {
        WordingCatalogue catalogue = new WordingCatalogue(file);
        Limits limits = Limits.STANDARD;
        int bytes = file.text().getBytes(StandardCharsets.UTF_8).length;
        if (bytes > limits.bytes()) {
            catalogue.problems.tooMuch(
                    "the file has %d bytes, at most %d are read; shorten it".formatted(bytes, limits.bytes()));
            return catalogue;
        }
        Document root = TemplateParser.parse(file.text(), limits);
        Shape shape = Shape.of(root, limits.depth());
        shape.tooDeep()
                .ifPresent(node -> catalogue.report(
                        node, "this is nested more than " + limits.depth() + " levels deep; nest it less"));
        if (shape.tooDeep().isEmpty()) {
            catalogue.readPairs(root);
        }
        return catalogue;
    }

    /** What is wrong with the file. */
    public List<Problem> problems() {
        return problems.all();
    }

    Map<String, Wording.Words> words() {
        return words;
    }

    private void readPairs(Document root) {
        boolean started = false;
        Node block = root.getFirstChild();
        while (block != null) {
            if (block instanceof BlockQuote quote) {
                started = true;
                if (block.getNext() instanceof Paragraph paragraph) {
                    pair(quote, paragraph);
                    block = paragraph;
                } else {
                    report(quote, "this quote has no words behind it; " + NO_PAIR);
                }
            } else if (!(block instanceof Heading
                    || block instanceof HtmlBlock
                    || !started && block instanceof Paragraph)) {
                report(block, "this belongs to no quote; " + NO_PAIR);
            }
            block = block.getNext();
        }
    }

    private void pair(BlockQuote quote, Paragraph paragraph) {
        if (!(quote.getFirstChild() instanceof Paragraph original && original == quote.getLastChild())) {
            report(
                    quote,
                    "the original is not one paragraph; give a heading without its #, a list item without its sign");
            return;
        }
        String key = SourceText.key(original, file.text());
        Set<String> asked = placeholders(original);
        Set<String> given = placeholders(paragraph);
        Wording.Words known = words.get(key);
        if (known != null) {
            report(quote, "the same original stands above line " + (known.line() + 1) + " already; keep one of them");
        } else if (!asked.equals(given)) {
            report(
                    paragraph,
                    "the words have " + shown(given) + ", the original has " + shown(asked)
                            + "; use the same placeholders");
        } else {
            int line = paragraph.getSourceSpans().get(0).getLineIndex();
            words.put(key, new Wording.Words(file.name(), line, SourceText.lines(paragraph, file.text())));
        }
    }

    private static Set<String> placeholders(Node block) {
        return TemplateNodes.of(block).stream()
                .filter(Placeholder.class::isInstance)
                .map(node -> SourceText.normal(((Placeholder) node).query()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String shown(Set<String> placeholders) {
        return placeholders.isEmpty()
                ? "no placeholder"
                : placeholders.stream().map(query -> "{{ " + query + " }}").collect(Collectors.joining(", "));
    }

    private void report(Node node, String wrong) {
        problems.add(Problem.Kind.MALFORMED, node, Origin.ofTemplate(file.name()), wrong);
    }
}
