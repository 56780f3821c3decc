package groupwright.documents.pdf;

import groupwright.documents.content.Verdict;
import java.awt.Color;

/** The light colours, which paper always uses. */
final class Paper {
    static final Color WHITE = new Color(0xFFFFFF);
    static final Color INK = new Color(0x16201C);
    static final Color MUTED = new Color(0x53605A);
    static final Color EDGE = new Color(0x75837C);
    static final Color HAIRLINE = new Color(0xCAD2CD);
    static final Color ACCENT = new Color(0x463A94);
    private static final Color MEETS = new Color(0x007A59);
    private static final Color MISSES = new Color(0xBD4F00);
    private static final Color CLOSE = new Color(0x2B3742);
    private static final Color MISSING = new Color(0x66736C);

    private Paper() {}

    /** Colour of a verdict's mark and bar. */
    static Color of(Verdict verdict) {
        return switch (verdict) {
            case MEETS -> MEETS;
            case MISSES -> MISSES;
            case MEETS_CLOSE, MISSES_CLOSE -> CLOSE;
            case MISSING_INPUT -> MISSING;
        };
    }
}
