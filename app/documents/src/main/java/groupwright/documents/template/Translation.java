package groupwright.documents.template;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.parser.Parser;

/** Puts the words of another language in the place of a template's own, before anything is filled in. */
final class Translation {
    private final Wording wording;
    private final Parser parser;
    private final TreeSet<Integer> missing = new TreeSet<>(); // a repeated section lacks its words once

    Translation(Wording wording, Parser parser) {
        this.wording = wording;
        this.parser = parser;
    }

    /** Where each node of a translated tree is written: in the template, or where its block's words are. */
    static final class Places {
        private final Map<Node, Origin> ofBlocks = new HashMap<>(); // by identity, as nodes compare; looked up only
        private final Origin otherwise;

        private Places(Origin otherwise) {
            this.otherwise = otherwise;
        }

        Origin of(Node node) {
            Node around = node;
            while (around != null && !ofBlocks.containsKey(around)) {
                around = around.getParent();
            }
            return around == null ? otherwise : ofBlocks.get(around);
        }
    }

    /**
     * Translates what the wording knows of a tree.
     *
     * @param source what the tree was parsed from
     */
    Places translate(Document root, String source, Origin origin) {
        Places places = new Places(origin);
        for (Node block : leaves(root)) {
            String original = SourceText.key(block, source);
            Optional<Wording.Words> words = wording.of(original);
            if (words.isPresent()) {
                replace(block, words.get().markdown());
                places.ofBlocks.put(block, Origin.ofWords(words.get()));
            } else if (hasWords(original)) {
                missing.add(origin.line(block));
            }
        }
        return places;
    }

    /** Whether letters stand outside of double braces; one look at each sign, whatever the braces are. */
    private static boolean hasWords(String text) {
        int at = 0;
        while (at < text.length()) {
            int open = text.indexOf("{{", at);
            int end = open < 0 ? text.length() : open;
            if (text.substring(at, end).codePoints().anyMatch(Character::isLetter)) {
                return true;
            }
            int close = open < 0 ? -1 : text.indexOf("}}", open);
            at = close < 0 ? text.length() : close + 2;
        }
        return false;
    }

    /** One sentence if blocks had no words. */
    Optional<String> warning() {
        return wording.missing(missing);
    }

    private void replace(Node block, String markdown) {
        while (block.getFirstChild() != null) {
            block.getFirstChild().unlink();
        }
        TemplateNodes.moveChildren(parser.parse(markdown).getFirstChild(), block);
    }

    private static List<Node> leaves(Document root) {
        List<Node> found = new ArrayList<>();
        root.accept(new AbstractVisitor() {
            @Override
            public void visit(Paragraph paragraph) {
                found.add(paragraph);
            }

            @Override
            public void visit(Heading heading) {
                found.add(heading);
            }

            @Override
            public void visit(CustomNode node) {
                if (node instanceof TableCell) {
                    found.add(node);
                } else {
                    visitChildren(node);
                }
            }
        });
        return found;
    }
}
