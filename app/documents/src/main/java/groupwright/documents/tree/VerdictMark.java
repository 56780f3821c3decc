package groupwright.documents.tree;

import groupwright.documents.content.Verdict;
import org.commonmark.node.CustomNode;

/** A verdict: mark and word. */
public final class VerdictMark extends CustomNode {
    private final Verdict verdict;
    private final String word;

    public VerdictMark(Verdict verdict, String word) {
        this.verdict = verdict;
        this.word = word;
    }

    /** Which mark. */
    public Verdict verdict() {
        return verdict;
    }

    /** The word beside it. */
    public String word() {
        return word;
    }
}
