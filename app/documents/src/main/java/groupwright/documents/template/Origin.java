package groupwright.documents.template;

import java.util.List;
import org.commonmark.node.Node;
import org.commonmark.node.SourceSpan;

/** Where a piece of parsed Markdown lies in the template: the whole of it, or the body of a fenced block. */
final class Origin {
    /** Spans of the lines in the template; empty for the template itself, which starts where it starts. */
    private final List<SourceSpan> lines;

    private Origin(List<SourceSpan> lines) {
        this.lines = lines;
    }

    static Origin ofTemplate() {
        return new Origin(List.of());
    }

    /** The place of a fenced block's body, which begins on the line after its fence. */
    Origin ofBody(Node fence) {
        List<SourceSpan> spans = fence.getSourceSpans().stream()
                .map(span -> SourceSpan.of(lineOf(span), columnOf(span), span.getLength()))
                .toList();
        return new Origin(spans.subList(Math.min(1, spans.size()), spans.size()));
    }

    /** Line of a node, from 1. */
    int line(Node node) {
        return first(node) == null ? 1 : lineOf(first(node)) + 1;
    }

    /** Column of a node, from 1. */
    int column(Node node) {
        return first(node) == null ? 1 : columnOf(first(node)) + 1;
    }

    private static SourceSpan first(Node node) {
        Node nearest = node;
        while (nearest != null && nearest.getSourceSpans().isEmpty()) {
            nearest = nearest.getParent();
        }
        return nearest == null ? null : nearest.getSourceSpans().get(0);
    }

    private int lineOf(SourceSpan span) {
        return lines.isEmpty() ? span.getLineIndex() : lineSpan(span).getLineIndex();
    }

    private int columnOf(SourceSpan span) {
        return span.getColumnIndex() + (lines.isEmpty() ? 0 : lineSpan(span).getColumnIndex());
    }

    private SourceSpan lineSpan(SourceSpan span) {
        return lines.get(Math.min(span.getLineIndex(), lines.size() - 1));
    }
}
