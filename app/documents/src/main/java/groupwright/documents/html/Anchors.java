package groupwright.documents.html;

import groupwright.documents.trace.Use;
import groupwright.documents.tree.Caption;
import groupwright.documents.tree.ChartBlock;
import groupwright.documents.tree.LiveNumber;
import groupwright.documents.tree.TraceMark;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;

/**
 * Names of places in one document, each once: {@code table-3} and {@code figure-1} after the captions, {@code rows-1}
 * for a table without one, headings after their words, as common viewers of Markdown name them.
 */
final class Anchors {
    /** Below the title of the document. */
    private static final int TOP_LEVEL = 2;

    private static final int LOWEST_LEVEL = 6;
    private static final Pattern NUMBER = Pattern.compile("\\d+([-.]\\d+)*");
    private static final Pattern OF_NUMBERS = Pattern.compile("n\\d+|u\\d+-\\d+");

    private final Map<Node, String> names = new IdentityHashMap<>(); // looked up only
    private final Map<Node, Section> placed = new IdentityHashMap<>(); // looked up only
    private final Map<Use, Section> sections = new HashMap<>(); // looked up only
    private final Set<String> taken = new HashSet<>();
    private final List<Section> headings = new ArrayList<>();
    private int bare;

    /**
     * A heading.
     *
     * @param level from 2; levels that the template skips are closed up, so that no step goes down more than one
     */
    record Section(String name, String title, int level) {}

    private Anchors() {}

    /** Names everything in a document. Cost grows with its nodes. */
    static Anchors of(Document root) {
        Anchors anchors = new Anchors();
        anchors.nameBlocks(root);
        anchors.nameHeadings(root);
        return anchors;
    }

    /** Name of a table or chart. */
    String of(Node node) {
        return names.get(node);
    }

    /** The heading as it stands here. */
    Section section(Heading heading) {
        return placed.get(heading);
    }

    /** All headings in order. */
    List<Section> headings() {
        return List.copyOf(headings);
    }

    /** The heading above a number; none where the document begins without one. */
    Optional<Section> sectionOf(Use use) {
        return Optional.ofNullable(sections.get(use));
    }

    private void nameBlocks(Node parent) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof TableBlock && node.getParent() instanceof ChartBlock) {
                names.put(node, unique(names.get(node.getParent()) + "-numbers"));
            } else if (node instanceof TableBlock) {
                names.put(node, unique(captioned(node, "table-").orElseGet(() -> "rows-" + ++bare)));
            } else if (node instanceof ChartBlock) {
                names.put(node, unique(captioned(node, "figure-").orElse("figure")));
            }
            nameBlocks(node);
        }
    }

    private static Optional<String> captioned(Node node, String kind) {
        if (node.getPrevious() instanceof Caption caption) {
            Matcher number = NUMBER.matcher(caption.number());
            return number.find() ? Optional.of(kind + number.group().replace('.', '-')) : Optional.empty();
        }
        return Optional.empty();
    }

    private void nameHeadings(Document root) {
        List<Integer> open = new ArrayList<>();
        for (Node node = root.getFirstChild(); node != null; node = node.getNext()) {
            nameHeadings(node, open);
        }
    }

    private void nameHeadings(Node node, List<Integer> open) {
        if (node instanceof Heading heading) {
            while (!open.isEmpty() && open.get(open.size() - 1) >= heading.getLevel()) {
                open.remove(open.size() - 1);
            }
            int level = Math.min(TOP_LEVEL + open.size(), LOWEST_LEVEL);
            open.add(heading.getLevel());
            String title = Wording.of(heading);
            Section section = new Section(unique(slug(title)), title, level);
            placed.put(heading, section);
            headings.add(section);
        }
        if (node instanceof LiveNumber number && !headings.isEmpty()) {
            sections.put(number.use(), headings.get(headings.size() - 1));
        }
        if (node instanceof TraceMark mark && !headings.isEmpty()) {
            sections.put(mark.use(), headings.get(headings.size() - 1));
        }
        for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
            nameHeadings(child, open);
        }
    }

    private static String slug(String title) {
        String slug = title.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N} _-]", "")
                .replace(' ', '-');
        return slug.isBlank() ? "section" : OF_NUMBERS.matcher(slug).matches() ? slug + "-" : slug;
    }

    private String unique(String wanted) {
        String name = wanted;
        for (int i = 1; !taken.add(name); i++) {
            name = wanted + "-" + i;
        }
        return name;
    }
}
