package groupwright.documents.template;

import java.util.List;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/** Where a piece of parsed Markdown lies in the template: the whole of it, or the body of a fenced block. */
final class Origin {
    private final String file;

    /** Line of the template, from 0, where the piece starts. */
    private final int firstLine;

    /** Where lines of the piece start in the template; lines that are blank there have no span. */
    private final List<SourceSpan> spans;

    /** How many blocks it lies in. */
    private final int depth;

    private Origin(String file, int firstLine, List<SourceSpan> spans, int depth) {
        this.file = file;
        this.depth = depth;
        this.firstLine = firstLine;
        this.spans = spans;
    }

    static Origin ofTemplate(String file) {
        return new Origin(file, 0, List.of(), 0);
    }

    /** The place of words that took the place of what the template says. */
    static Origin ofWords(Wording.Words words) {
        return new Origin(words.file(), words.line(), List.of(), 0);
    }

    /** The place of a fenced block's body, which begins on the line after its fence. */
    Origin ofBody(Node fence) {
        List<SourceSpan> inTemplate = fence.getSourceSpans().stream()
                .map(span -> SourceSpan.of(lineOf(span), columnOf(span), span.getLength()))
                .toList();
        return new Origin(file, inTemplate.get(0).getLineIndex() + 1, inTemplate, depth + 1);
    }

    /** Name of the file. */
    String file() {
        return file;
    }

    /** How many blocks the piece lies in; 0 for the template itself. */
    int depth() {
        return depth;
    }

    /** Line of a node, from 1. */
    int line(Node node) {
        return first(node) == null ? 1 : lineOf(first(node)) + 1;
    }

    /** Column of a node, from 1. */
    int column(Node node) {
        return first(node) == null ? 1 : columnOf(first(node)) + 1;
    }

    /** Gives a heading the place in the template that it was found at, so that it can be told once it has moved. */
    void settle(Heading heading) {
        SourceSpan first = heading.getSourceSpans().get(0);
        heading.setSourceSpans(List.of(SourceSpan.of(lineOf(first), columnOf(first), first.getLength())));
    }

    private static SourceSpan first(Node node) {
        Node nearest = node;
        while (nearest != null && nearest.getSourceSpans().isEmpty()) {
            nearest = nearest.getParent();
        }
        return nearest == null ? null : nearest.getSourceSpans().get(0);
    }

    private int lineOf(SourceSpan span) {
        return firstLine + span.getLineIndex();
    }

    private int columnOf(SourceSpan span) {
        int indent = spans.stream()
                .filter(line -> line.getLineIndex() == lineOf(span))
                .mapToInt(SourceSpan::getColumnIndex)
                .findFirst()
                .orElse(0);
        return indent + span.getColumnIndex();
    }
}
