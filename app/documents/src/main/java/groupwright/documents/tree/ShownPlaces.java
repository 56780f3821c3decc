package groupwright.documents.tree;

import java.util.List;
import org.commonmark.node.CustomNode;

/**
 * Stands for all places of a document where some numbers are shown: pages on paper, links elsewhere. The places are known
 * only once the document is complete, so renderers look them up in its trace.
 */
public final class ShownPlaces extends CustomNode {
    private final List<Integer> entries;

    public ShownPlaces(List<Integer> entries) {
        this.entries = List.copyOf(entries);
    }

    /** Numbers of the entries, from 1, each once. */
    public List<Integer> entries() {
        return entries;
    }
}
