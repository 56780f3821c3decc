package groupwright.documents.template;

import java.util.stream.Collectors;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;

/** What a parsed block looked like before it was parsed. */
final class SourceText {
    private SourceText() {}

    /** By what a block's words are looked up: its source text, a heading's without its marks, white space as one space. */
    static String key(Node block, String source) {
        String text = lines(block, source);
        return normal(block instanceof Heading ? bare(text) : text);
    }

    /** A block's source text, each line without the signs of the blocks around it. */
    static String lines(Node block, String source) {
        return block.getSourceSpans().stream()
                .map(span -> source.substring(span.getInputIndex(), span.getInputIndex() + span.getLength()))
                .collect(Collectors.joining("\n"));
    }

    static String normal(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    private static String bare(String heading) {
        return heading.startsWith("#")
                ? heading.replaceFirst("^#+", "").replaceFirst("(^|\\s)#+\\s*$", "")
                : heading.replaceFirst("\\n[=-]+\\s*$", "");
    }
}
