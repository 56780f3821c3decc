package groupwright.documents.html;

import groupwright.documents.tree.LiveNumber;
import groupwright.documents.tree.VerdictMark;
import org.commonmark.node.Code;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** The words of a part of the tree, without marks and links. */
final class Wording {
    private Wording() {}

    static String of(Node parent) {
        StringBuilder words = new StringBuilder();
        collect(parent, words);
        return words.toString();
    }

    private static void collect(Node parent, StringBuilder words) {
        for (Node node = parent.getFirstChild(); node != null; node = node.getNext()) {
            if (node instanceof Text text) {
                words.append(text.getLiteral());
            } else if (node instanceof Code code) {
                words.append(code.getLiteral());
            } else if (node instanceof LiveNumber number) {
                words.append(number.shown().text());
            } else if (node instanceof VerdictMark mark) {
                words.append(mark.word());
            } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
                words.append(' ');
            } else {
                collect(node, words);
            }
        }
    }
}
