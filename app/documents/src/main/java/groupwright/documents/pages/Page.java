package groupwright.documents.pages;

import java.util.List;

/** What stands on one page. */
record Page(List<Placed> slabs) {
    /**
     * A slab and where its upper edge is.
     */
    record Placed(Slab slab, double top) {}

    Page {
        slabs = List.copyOf(slabs);
    }
}
