package groupwright.documents.template;

import groupwright.documents.content.Content;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.Measures;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceRegister;
import groupwright.documents.tree.DocumentTree;
import groupwright.documents.tree.EntryBlock;
import groupwright.documents.tree.Issue;
import groupwright.documents.tree.TitleBlock;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Text;

/** Makes a document from a template: parse, fill in, and add what every document carries. */
public final class DocumentBuilder {
    private final Limits limits;

    public DocumentBuilder() {
        this(Limits.STANDARD);
    }

    DocumentBuilder(Limits limits) {
        this.limits = limits;
    }

    /** Fills a template that stays in the language it is written in, see {@link #build(Template, Wording, Content, Issue)}. */
    public Expansion build(Template template, Content content, Issue issue) {
        return build(template, Wording.AS_WRITTEN, content, issue);
    }

    /**
     * Fills a template.
     *
     * @param wording what its blocks say in the language of the document
     * @param content answers the template's questions; what it throws is a programmer's mistake and passes through
     * @return the document, or all problems found
     */
    public Expansion build(Template template, Wording wording, Content content, Issue issue) {
        Objects.requireNonNull(content, "content");
        Problems problems = new Problems(template.name());
        int bytes = template.text().getBytes(StandardCharsets.UTF_8).length;
        if (bytes > limits.bytes()) {
            problems.tooMuch(
                    "the template has %d bytes, at most %d are read; split it".formatted(bytes, limits.bytes()));
            return new Expansion.Refused(problems.all());
        }
        Labels labels = Labels.of(issue.locale());
        TraceRegister register = new TraceRegister();
        Expander expander = new Expander(limits, labels, wording, register, problems);
        Document root = expander.expand(template, content);
        if (!problems.all().isEmpty()) {
            return new Expansion.Refused(problems.all());
        }
        return new Expansion.Complete(complete(root, issue, labels, register.trace()), expander.warnings());
    }

    private static String introduction(Trace trace, Issue issue, Labels labels) {
        if (trace.entries().isEmpty()) {
            return labels.text("trace.none");
        }
        String intro = issue.only().isEmpty()
                ? labels.text("trace.intro")
                : labels.text("trace.intro") + " " + labels.text("trace.introOnly", issue.only());
        return issue.measures() == Measures.IMPERIAL ? intro + " " + labels.text("trace.introImperial") : intro;
    }

    private static DocumentTree complete(Document root, Issue issue, Labels labels, Trace trace) {
        new Numbering(labels).number(root);
        root.prependChild(new TitleBlock(issue));
        Heading chapter = new Heading();
        chapter.setLevel(1);
        chapter.appendChild(new Text(labels.text("annex.heading", "A", labels.text("trace.chapter"))));
        root.appendChild(chapter);
        Nodes nodes = new Nodes(labels, new TraceRegister());
        root.appendChild(nodes.paragraph(introduction(trace, issue, labels)));
        trace.entries().forEach(entry -> root.appendChild(new EntryBlock(entry)));
        return new DocumentTree(issue, root, chapter, trace);
    }
}
