package groupwright.documents.pages;

import java.util.ArrayList;
import java.util.List;

/** Stacks lines of text as slabs. */
final class Paragraphs {
    /** Share of the leading above the baseline. */
    static final double ABOVE_BASELINE = 0.76;

    private Paragraphs() {}

    /** One slab for each line; the first two and the last two stay together. */
    static List<Slab> slabs(List<Line> lines, double x, double leading, double before) {
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Slab slab = slab(lines.get(i), x, leading, i == 0 ? before : 0);
            boolean keeps = lines.size() > 1 && (i == 0 || i == lines.size() - 2);
            slabs.add(keeps ? slab.keepingNext() : slab);
        }
        return slabs;
    }

    /** The slab of one line. */
    static Slab slab(Line line, double x, double leading, double before) {
        double baseline = leading * ABOVE_BASELINE;
        List<Slab.Sighting> sightings = line.uses().stream()
                .map(use -> new Slab.Sighting(use, baseline))
                .toList();
        return Slab.of(
                before,
                leading,
                sightings,
                (canvas, top) -> LinePainter.paint(canvas, line, x, top + baseline, top, top + leading));
    }

    /** Slabs that all belong on one page. */
    static List<Slab> kept(List<Slab> slabs) {
        List<Slab> kept = new ArrayList<>();
        for (int i = 0; i < slabs.size(); i++) {
            kept.add(i < slabs.size() - 1 ? slabs.get(i).keepingNext() : slabs.get(i));
        }
        return kept;
    }
}
