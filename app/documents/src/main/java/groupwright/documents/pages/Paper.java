package groupwright.documents.pages;

import groupwright.documents.charts.Palette;
import groupwright.documents.content.Verdict;
import java.awt.Color;

/** The light colours, which paper always uses. */
final class Paper {
    static final Color WHITE = Palette.PAPER.surface();
    static final Color INK = Palette.PAPER.ink();
    static final Color MUTED = Palette.PAPER.muted();
    static final Color EDGE = Palette.PAPER.edge();
    static final Color HAIRLINE = Palette.PAPER.hairline();
    static final Color ACCENT = Palette.PAPER.accent();
    /** Patch behind a number that changed, on screens only: yellow of Okabe and Ito (2008). */
    static final Color CHANGED = new Color(0xF0E442);

    private Paper() {}

    /** Colour of a verdict's mark and bar. */
    static Color of(Verdict verdict) {
        return switch (verdict) {
            case MEETS -> Palette.PAPER.meets();
            case MISSES -> Palette.PAPER.misses();
            case MEETS_CLOSE, MISSES_CLOSE -> Palette.PAPER.close();
            case MISSING_INPUT -> Palette.PAPER.missing();
        };
    }
}
