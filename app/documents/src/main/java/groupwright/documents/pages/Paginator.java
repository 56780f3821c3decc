package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;

/** Puts slabs on pages, from top to bottom, keeping together what belongs together where a page can hold it. */
final class Paginator {
    /** Of a group taller than a page so much stays together: heading, caption, table head and first row. */
    private static final int FIRST_OF_TALL = 4;

    private final PageGeometry geometry;
    private final List<Page> pages = new ArrayList<>();
    private List<Page.Placed> current = new ArrayList<>();
    private double y = PageGeometry.BODY_TOP;

    private Paginator(PageGeometry geometry) {
        this.geometry = geometry;
    }

    /** The pages for some slabs, starting on a new one; none for no slabs. */
    static List<Page> paginate(List<Slab> slabs, PageGeometry geometry) {
        Paginator paginator = new Paginator(geometry);
        int start = 0;
        while (start < slabs.size()) {
            int end = start;
            while (end < slabs.size() - 1 && slabs.get(end).keepsNext()) {
                end++;
            }
            paginator.placeGroup(slabs.subList(start, end + 1));
            start = end + 1;
        }
        paginator.endPage();
        return paginator.pages;
    }

    private void placeGroup(List<Slab> group) {
        boolean whole = fitsOnePage(group);
        List<Slab> together = whole ? group : group.subList(0, Math.min(group.size(), FIRST_OF_TALL));
        if (!fits(together) && fitsOnePage(together)) {
            endPage();
        }
        for (Slab slab : group) { // a group taller than a page breaks where the page ends
            place(slab);
        }
    }

    private void place(Slab slab) {
        if (!fits(List.of(slab))) {
            endPage();
        }
        if (current.isEmpty()) {
            slab.head().ifPresent(this::put);
        }
        put(slab);
    }

    private void put(Slab slab) {
        y += current.isEmpty() ? 0 : slab.before();
        current.add(new Page.Placed(slab, y));
        y += slab.height();
    }

    private void endPage() {
        if (!current.isEmpty()) {
            pages.add(new Page(current));
            current = new ArrayList<>();
            y = PageGeometry.BODY_TOP;
        }
    }

    private boolean fits(List<Slab> group) {
        double need = height(group) + (current.isEmpty() ? 0 : group.get(0).before());
        return current.isEmpty() || y + need <= geometry.bodyBottom() + 0.01;
    }

    private boolean fitsOnePage(List<Slab> group) {
        double head = group.get(0).head().map(Slab::height).orElse(0.0);
        return head + height(group) <= geometry.bodyHeight();
    }

    /** Height without the space above the first. */
    private static double height(List<Slab> group) {
        double height = 0;
        for (int i = 0; i < group.size(); i++) {
            height += group.get(i).height() + (i == 0 ? 0 : group.get(i).before());
        }
        return height;
    }
}
