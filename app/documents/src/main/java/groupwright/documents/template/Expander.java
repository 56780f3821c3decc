package groupwright.documents.template;

import groupwright.definition.figure.Nearest;
import groupwright.documents.charts.Chart;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Content;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.content.Unanswered;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.TraceRegister;
import groupwright.documents.tree.Caption;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import org.commonmark.node.Document;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Parses Markdown, then fills in answers as nodes, so that no record text is ever parsed. */
final class Expander {
    private final Limits limits;
    private final Labels labels;
    private final Problems problems;
    private final Nodes nodes;
    private final Parser parser;
    private final Translation translation;
    private int blocks;
    private int tables;
    private int figures;

    Expander(Limits limits, Labels labels, Wording wording, TraceRegister register, Problems problems) {
        this.limits = limits;
        this.labels = labels;
        this.problems = problems;
        this.nodes = new Nodes(labels, register);
        this.parser = TemplateParser.of(limits);
        this.translation = new Translation(wording, parser);
    }

    Document expand(Template template, Content content) {
        return expand(template.text(), content, Origin.ofTemplate(template.name()), 0);
    }

    /** One sentence each about what the document lacks and yet can do without. */
    List<String> warnings() {
        return translation.warning().stream().toList();
    }

    private Document expand(String markdown, Content content, Origin origin, int loops) {
        Document root = (Document) parser.parse(markdown);
        Shape shape = Shape.of(root, limits.depth());
        shape.tooDeep()
                .ifPresent(node -> report(
                        Problem.Kind.TOO_MUCH,
                        node,
                        origin,
                        "this is nested more than " + limits.depth() + " levels deep; nest it less"));
        if (shape.tooDeep().isPresent() || !affords(shape.blocks(), root, origin)) {
            return root;
        }
        Translation.Places places = translation.translate(root, markdown, origin);
        List<Heading> headings = TemplateNodes.headings(root); // before headings of repeated sections come in
        for (Node node : TemplateNodes.of(root)) { // in document order: numbers are registered as they are met
            if (node instanceof Placeholder placeholder) {
                fill(placeholder, content, places.of(placeholder));
            } else if (node instanceof FencedCodeBlock fence) {
                fill(fence, content, origin, loops);
            } else {
                Origin place = places.of(node); // before a check that takes it out
                Restrictions.check(node).ifPresent(wrong -> report(Problem.Kind.NOT_ALLOWED, node, place, wrong));
            }
        }
        headings.forEach(origin::settle);
        TemplateNodes.joinTexts(root);
        return root;
    }

    private void fill(Placeholder placeholder, Content content, Origin origin) {
        Optional<TextAnswer.Given> given = ask(placeholder, content, origin);
        given.ifPresent(
                answer -> answer.phrase().parts().forEach(part -> placeholder.insertBefore(nodes.inline(part))));
        placeholder.unlink();
    }

    private Optional<TextAnswer.Given> ask(Placeholder placeholder, Content content, Origin origin) {
        String query = placeholder.query();
        if (placeholder.form() == Placeholder.Form.NOT_CLOSED) {
            report(
                    Problem.Kind.MALFORMED,
                    placeholder,
                    origin,
                    "\"{{\" is not closed by \"}}\" on the same line"
                            + " or in the same table cell; close it, or write \"\\{{\" for two braces");
        } else if (query.isEmpty()) {
            report(
                    Problem.Kind.MALFORMED,
                    placeholder,
                    origin,
                    "nothing stands between \"{{\" and \"}}\"; write"
                            + " what to show, for example {{ gear-range lead }}");
        } else if (!content.names().contains(firstWord(query))) {
            String name = firstWord(query);
            report(
                    Problem.Kind.UNKNOWN_NAME,
                    placeholder,
                    origin,
                    "nothing is called \"" + name + "\"; " + suggestion(name, content.names()));
        } else {
            TextAnswer answer = content.text(query);
            if (answer instanceof TextAnswer.Given given) {
                return Optional.of(given);
            }
            report(Problem.Kind.UNANSWERED, placeholder, origin, ((Unanswered) answer).sentence());
        }
        return Optional.empty();
    }

    private void fill(FencedCodeBlock fence, Content content, Origin origin, int loops) {
        String info = Optional.ofNullable(fence.getInfo()).orElse("").strip();
        String name = firstWord(info);
        if (!content.blockNames().contains(name)) {
            if (name.length() > 3 && Nearest.of(name, content.blockNames()).isPresent()) {
                report(
                        Problem.Kind.UNKNOWN_NAME,
                        fence,
                        origin,
                        "no block is called \"" + name + "\"; " + suggestion(name, content.blockNames()));
            }
            return; // code to show
        }
        BlockAnswer answer = content.block(name, info.substring(name.length()).strip());
        if (answer instanceof Unanswered unanswered) {
            report(Problem.Kind.UNANSWERED, fence, origin, unanswered.sentence());
        } else if (answer instanceof BlockAnswer.Repeated repeated) {
            repeat(repeated, fence, origin, loops);
        } else if (answer instanceof BlockAnswer.Table table) {
            insertTable(table, fence, content, origin, loops);
        } else if (answer instanceof BlockAnswer.Drawing drawing) {
            insertChart(drawing, fence, content, origin, loops);
        } else if (answer instanceof BlockAnswer.Items items) {
            insertList(items, fence, origin);
        } else if (answer instanceof BlockAnswer.Paragraph paragraph && affords(1, fence, origin)) {
            fence.insertBefore(nodes.paragraph(paragraph.phrase()));
        }
        fence.unlink();
    }

    private void insertList(BlockAnswer.Items items, Node fence, Origin origin) {
        if (items.items().isEmpty()) {
            fence.insertBefore(nodes.paragraph(labels.text("nothing.toShow")));
        } else if (affords(1 + 2 * items.items().size(), fence, origin)) {
            fence.insertBefore(nodes.list(items));
        }
    }

    private void insertTable(
            BlockAnswer.Table table, FencedCodeBlock fence, Content content, Origin origin, int loops) {
        if (!affords(1 + table.rows().size(), fence, origin)) {
            return;
        }
        if (!fence.getLiteral().isBlank()) {
            insertCaption(labels.text("caption.table", Integer.toString(++tables)), fence, content, origin, loops);
        }
        fence.insertBefore(nodes.table(table));
        if (table.rows().isEmpty()) {
            fence.insertBefore(nodes.paragraph(labels.text("nothing.toShow")));
        }
    }

    private void insertChart(
            BlockAnswer.Drawing drawing, FencedCodeBlock fence, Content content, Origin origin, int loops) {
        Chart chart = drawing.chart();
        if (!affords(3 + chart.table().rows().size(), fence, origin)) {
            return;
        }
        String number = labels.text("caption.figure", Integer.toString(++figures));
        if (fence.getLiteral().isBlank()) {
            Caption caption = new Caption(number);
            caption.appendChild(new Text(chart.title() + ": " + chart.caption()));
            fence.insertBefore(caption);
        } else {
            insertCaption(number, fence, content, origin, loops);
        }
        if (fence.getPrevious() instanceof Caption caption) { // none where the author's words were refused
            nodes.marks(drawing.entries()).forEach(caption::appendChild);
        }
        fence.insertBefore(nodes.chart(chart));
    }

    private void insertCaption(String number, FencedCodeBlock fence, Content content, Origin origin, int loops) {
        Document words = expand(fence.getLiteral(), content, origin.ofBody(fence), loops);
        if (words.getFirstChild() instanceof Paragraph only && only == words.getLastChild()) {
            Caption caption = new Caption(number);
            TemplateNodes.moveChildren(only, caption);
            fence.insertBefore(caption);
        } else {
            report(
                    Problem.Kind.MALFORMED,
                    fence,
                    origin,
                    "the caption of a table or chart is one paragraph; take the rest out of this block");
        }
    }

    private void repeat(BlockAnswer.Repeated repeated, FencedCodeBlock fence, Origin origin, int loops) {
        if (loops >= limits.loops()) {
            report(
                    Problem.Kind.TOO_MUCH,
                    fence,
                    origin,
                    "sections repeat at most " + limits.loops()
                            + " levels deep; take this block out of the one around it");
            return;
        }
        for (Content each : repeated.contents()) {
            if (blocks > limits.blocks()) {
                return;
            }
            Document section = expand(fence.getLiteral(), each, origin.ofBody(fence), loops + 1);
            TemplateNodes.moveChildrenBefore(section, fence);
        }
    }

    private boolean affords(int more, Node node, Origin origin) {
        boolean afforded = blocks <= limits.blocks();
        blocks = Math.min(blocks + more, limits.blocks() + 1);
        if (afforded && blocks > limits.blocks()) { // said once
            report(
                    Problem.Kind.TOO_MUCH,
                    node,
                    origin,
                    "the document would have more than " + limits.blocks() + " blocks here; ask for less");
        }
        return blocks <= limits.blocks();
    }

    private void report(Problem.Kind kind, Node node, Origin origin, String wrong) {
        problems.add(kind, origin.file(), origin.line(node), origin.column(node), wrong);
    }

    private static String suggestion(String name, SortedSet<String> known) {
        return Nearest.of(name, known)
                .map(nearest -> "did you mean \"" + nearest + "\"?")
                .orElse("the reference lists all names");
    }

    private static String firstWord(String text) {
        int end = 0;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return text.substring(0, end);
    }
}
