package groupwright.documents.pages;

import groupwright.documents.trace.Use;
import java.util.List;
import java.util.Optional;

/**
 * A strip of a page that is never split.
 *
 * @param before space above it, dropped at the top of a page
 * @param height without that space
 * @param keepsNext whether the next slab belongs on the same page
 * @param head what is drawn again above it when it comes first on a page
 * @param sightings the numbers on it
 * @param reach how far it reaches
 * @param painting draws it
 */
record Slab(
        double before,
        double height,
        boolean keepsNext,
        Optional<Slab> head,
        List<Sighting> sightings,
        Reach reach,
        Painting painting) {
    /** How far a slab reaches to the right. */
    enum Reach {
        /** Over the text column: notes stand beside it. */
        TEXT,
        /** Over the trace column, too. */
        PAGE
    }

    /** Draws a slab whose upper edge is at {@code top}. */
    interface Painting {
        void paint(Canvas canvas, double top);
    }

    /**
     * A number on a slab.
     *
     * @param baseline below the slab's upper edge
     */
    record Sighting(Use use, double baseline) {}

    Slab {
        sightings = List.copyOf(sightings);
    }

    static Slab of(double before, double height, List<Sighting> sightings, Painting painting) {
        return new Slab(before, height, false, Optional.empty(), sightings, Reach.TEXT, painting);
    }

    Slab keepingNext() {
        return new Slab(before, height, true, head, sightings, reach, painting);
    }

    Slab withBefore(double space) {
        return new Slab(space, height, keepsNext, head, sightings, reach, painting);
    }

    Slab reaching(Reach other) {
        return new Slab(before, height, keepsNext, head, sightings, other, painting);
    }

    Slab under(Slab repeated) {
        return new Slab(before, height, keepsNext, Optional.of(repeated), sightings, reach, painting);
    }

    /** The same slab with more drawn on it, behind what it draws. */
    Slab over(Painting more) {
        return new Slab(before, height, keepsNext, head, sightings, reach, (canvas, top) -> {
            more.paint(canvas, top);
            painting.paint(canvas, top);
        });
    }

    /** The same slab in which the space above and below belongs to it, for a frame without holes. */
    Slab padded(double above, double below) {
        List<Sighting> lower = sightings.stream()
                .map(sighting -> new Sighting(sighting.use(), sighting.baseline() + above))
                .toList();
        return new Slab(
                0,
                above + height + below,
                keepsNext,
                head,
                lower,
                reach,
                (canvas, top) -> painting.paint(canvas, top + above));
    }
}
