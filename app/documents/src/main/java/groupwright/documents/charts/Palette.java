package groupwright.documents.charts;

import java.awt.Color;
import java.util.List;

/**
 * The colours charts are painted in. A window gives those of its theme, pages use {@link #PAPER}.
 *
 * @param surface what the chart stands on; also what hollow shapes are filled with
 * @param ink text and limits
 * @param muted units and captions
 * @param edge axes, and bars that are not judged
 * @param hairline grid
 * @param accent what is selected
 * @param meets mark of a target that is met
 * @param misses mark of a target that is missed
 * @param close mark of a target too close to call
 * @param missing mark of a missing input
 * @param concepts hues of concepts by place, at least one; later places begin again
 */
public record Palette(
        Color surface,
        Color ink,
        Color muted,
        Color edge,
        Color hairline,
        Color accent,
        Color meets,
        Color misses,
        Color close,
        Color missing,
        List<Color> concepts) {
    /** Dark on white. Hues of concepts and verdicts follow Okabe and Ito (2008), deepened to keep contrast on white. */
    public static final Palette PAPER = new Palette(
            new Color(0xFFFFFF),
            new Color(0x16201C),
            new Color(0x53605A),
            new Color(0x75837C),
            new Color(0xCAD2CD),
            new Color(0x463A94),
            new Color(0x007A59),
            new Color(0xBD4F00),
            new Color(0x2B3742),
            new Color(0x66736C),
            List.of(new Color(0x0072B2), new Color(0x96650A), new Color(0xA8467E), new Color(0x16201C)));

    public Palette {
        concepts = List.copyOf(concepts);
        if (concepts.isEmpty()) {
            throw new IllegalArgumentException("a palette needs at least one hue for concepts");
        }
    }

    /** The hue of the concept at a place, from 1. */
    Color concept(int place) {
        return concepts.get(Math.floorMod(place - 1, concepts.size()));
    }
}
