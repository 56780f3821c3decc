package groupwright.documents.template;

import groupwright.documents.charts.Chart;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Content;
import groupwright.documents.content.Unanswered;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.TraceRegister;
import groupwright.documents.tree.Caption;
import java.util.List;
import java.util.Optional;
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
    private final Budget budget;
    private final Questions questions;

    Expander(Limits limits, Labels labels, Wording wording, TraceRegister register, Problems problems) {
        this.limits = limits;
        this.labels = labels;
        this.problems = problems;
        this.nodes = new Nodes(labels, register);
        this.parser = TemplateParser.of(limits);
        this.translation = new Translation(wording, parser);
        this.budget = new Budget(limits.blocks(), problems);
        this.questions = new Questions(problems);
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
                .ifPresent(node -> problems.add(
                        Problem.Kind.TOO_MUCH,
                        node,
                        origin,
                        "this is nested more than " + limits.depth() + " levels deep; nest it less"));
        if (shape.tooDeep().isPresent() || !budget.affords(shape.blocks(), root, origin)) {
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
                Restrictions.check(node).ifPresent(wrong -> problems.add(Problem.Kind.NOT_ALLOWED, node, place, wrong));
            }
        }
        headings.forEach(origin::settle);
        TemplateNodes.joinTexts(root);
        return root;
    }

    private void fill(Placeholder placeholder, Content content, Origin origin) {
        questions
                .ask(placeholder, content, origin)
                .ifPresent(answer ->
                        answer.phrase().parts().forEach(part -> placeholder.insertBefore(nodes.inline(part))));
        placeholder.unlink();
    }

    private void fill(FencedCodeBlock fence, Content content, Origin origin, int loops) {
        Optional<String> block = questions.block(fence, content, origin);
        if (block.isEmpty()) {
            return; // code to show, or reported
        }
        String info = Optional.ofNullable(fence.getInfo()).orElse("").strip();
        String name = block.get();
        BlockAnswer answer = content.block(name, info.substring(name.length()).strip());
        if (answer instanceof Unanswered unanswered) {
            problems.add(Problem.Kind.UNANSWERED, fence, origin, unanswered.sentence());
        } else if (answer instanceof BlockAnswer.Repeated repeated) {
            repeat(repeated, fence, origin, loops);
        } else if (answer instanceof BlockAnswer.Chosen chosen) {
            chosen.content().ifPresent(inner -> insertBody(fence, inner, origin, loops));
        } else if (answer instanceof BlockAnswer.Table table) {
            insertTable(table, fence, content, origin, loops);
        } else if (answer instanceof BlockAnswer.Drawing drawing) {
            insertChart(drawing, fence, content, origin, loops);
        } else if (answer instanceof BlockAnswer.Items items) {
            insertList(items, fence, origin);
        } else if (answer instanceof BlockAnswer.Paragraph paragraph && budget.affords(1, fence, origin)) {
            fence.insertBefore(nodes.paragraph(paragraph.phrase()));
        }
        fence.unlink();
    }

    private void insertList(BlockAnswer.Items items, Node fence, Origin origin) {
        if (items.items().isEmpty()) {
            fence.insertBefore(nodes.paragraph(labels.text("nothing.toShow")));
        } else if (budget.affords(1 + 2 * items.items().size(), fence, origin)) {
            fence.insertBefore(nodes.list(items));
        }
    }

    private void insertTable(
            BlockAnswer.Table table, FencedCodeBlock fence, Content content, Origin origin, int loops) {
        if (!budget.affords(1 + table.rows().size(), fence, origin)) {
            return;
        }
        if (!fence.getLiteral().isBlank()) {
            insertCaption(Caption.Kind.TABLE, fence, content, origin, loops);
        }
        fence.insertBefore(nodes.table(table));
        if (table.rows().isEmpty()) {
            fence.insertBefore(nodes.paragraph(labels.text("nothing.toShow")));
        }
    }

    private void insertChart(
            BlockAnswer.Drawing drawing, FencedCodeBlock fence, Content content, Origin origin, int loops) {
        Chart chart = drawing.chart();
        if (!budget.affords(3 + chart.table().rows().size(), fence, origin)) {
            return;
        }
        if (fence.getLiteral().isBlank()) {
            Caption caption = new Caption(Caption.Kind.FIGURE);
            caption.appendChild(new Text(chart.title() + ": " + chart.caption()));
            fence.insertBefore(caption);
        } else {
            insertCaption(Caption.Kind.FIGURE, fence, content, origin, loops);
        }
        if (fence.getPrevious() instanceof Caption caption) { // none where the author's words were refused
            nodes.marks(drawing.entries()).forEach(caption::appendChild);
        }
        fence.insertBefore(nodes.chart(chart));
    }

    private void insertCaption(Caption.Kind kind, FencedCodeBlock fence, Content content, Origin origin, int loops) {
        Optional<Document> words = body(fence, content, origin, loops);
        if (words.isEmpty()) {
            return;
        }
        if (words.get().getFirstChild() instanceof Paragraph only
                && only == words.get().getLastChild()) {
            Caption caption = new Caption(kind);
            TemplateNodes.moveChildren(only, caption);
            fence.insertBefore(caption);
        } else {
            problems.add(
                    Problem.Kind.MALFORMED,
                    fence,
                    origin,
                    "the caption of a table or chart is one paragraph; take the rest out of this block");
        }
    }

    private void repeat(BlockAnswer.Repeated repeated, FencedCodeBlock fence, Origin origin, int loops) {
        if (loops >= limits.loops()) {
            problems.add(
                    Problem.Kind.TOO_MUCH,
                    fence,
                    origin,
                    "sections repeat at most " + limits.loops()
                            + " levels deep; take this block out of the one around it");
            return;
        }
        int before = problems.count();
        for (Content each : repeated.contents()) {
            if (budget.isSpent() || problems.count() > before) {
                return; // what is wrong with one of them mostly is wrong with all
            }
            insertBody(fence, each, origin, loops + 1);
        }
    }

    private void insertBody(FencedCodeBlock fence, Content content, Origin origin, int loops) {
        body(fence, content, origin, loops).ifPresent(section -> TemplateNodes.moveChildrenBefore(section, fence));
    }

    private Optional<Document> body(FencedCodeBlock fence, Content content, Origin origin, int loops) {
        if (origin.depth() < limits.bodies()) {
            return Optional.of(expand(fence.getLiteral(), content, origin.ofBody(fence), loops));
        }
        problems.add(
                Problem.Kind.TOO_MUCH,
                fence,
                origin,
                "blocks stand in blocks at most " + limits.bodies()
                        + " levels deep; take this block out of the one around it");
        return Optional.empty();
    }
}
