package groupwright.documents.template;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Caption;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Text;

/**
 * Numbers headings through a finished document (1, 1.1, 1.1.1) and captions through each chapter (Table 4-1). Headings
 * deeper than three levels, inside quotes or lists, or without a number above them get none; one that starts with a number
 * of its author's keeps it, and the count goes on from there.
 */
final class Numbering extends AbstractVisitor {
    private static final int LEVELS = 3;
    private static final Pattern TYPED = Pattern.compile("(\\d+(?:\\.\\d+)*)\\.?(?:\\s.*)?", Pattern.DOTALL);

    /** A longer typed number is a year or a quantity, no count to go on from. */
    private static final Pattern COUNT = Pattern.compile("\\d{1,3}");

    private final Labels labels;
    private final int[] counts = new int[LEVELS];
    private final Map<Caption.Kind, Integer> captions = new EnumMap<>(Caption.Kind.class);

    Numbering(Labels labels) {
        this.labels = labels;
    }

    void number(Document document) {
        document.accept(this);
    }

    @Override
    public void visit(Heading heading) {
        int level = heading.getLevel();
        if (!(heading.getParent() instanceof Document) || level > LEVELS || level > 1 && counts[level - 2] == 0) {
            return;
        }
        Optional<String> typed = typedNumber(heading);
        countOn(level, typed);
        if (level == 1) {
            captions.clear();
        }
        if (typed.isEmpty()) {
            heading.prependChild(new Text(numberOf(level) + " "));
            TemplateNodes.joinTexts(heading);
        }
    }

    @Override
    public void visit(CustomBlock block) {
        if (block instanceof Caption caption) {
            String count = Integer.toString(captions.merge(caption.kind(), 1, Integer::sum));
            caption.setNumber(labels.text(
                    caption.kind() == Caption.Kind.TABLE ? "caption.table" : "caption.figure",
                    counts[0] == 0 ? count : counts[0] + "-" + count));
        }
    }

    private void countOn(int level, Optional<String> typed) {
        counts[level - 1]++;
        for (int deeper = level; deeper < LEVELS; deeper++) {
            counts[deeper] = 0;
        }
        String[] parts = typed.orElse("").split("\\.");
        if (parts.length == level && COUNT.matcher(parts[level - 1]).matches()) {
            counts[level - 1] = Integer.parseInt(parts[level - 1]);
        }
    }

    private String numberOf(int level) {
        StringBuilder number = new StringBuilder().append(counts[0]);
        for (int i = 1; i < level; i++) {
            number.append('.').append(counts[i]);
        }
        return number.toString();
    }

    private static Optional<String> typedNumber(Heading heading) {
        if (!(heading.getFirstChild() instanceof Text text)) {
            return Optional.empty();
        }
        Matcher typed = TYPED.matcher(text.getLiteral());
        return typed.matches() ? Optional.of(typed.group(1)) : Optional.empty();
    }
}
