package groupwright.documents.pages;

import com.lowagie.text.pdf.BaseFont;
import java.util.Arrays;

/**
 * Advances of one font, looked up once for each sign of the writing systems documents mostly use. Several threads may ask:
 * at worst they look the same advance up twice.
 */
final class FontMetrics {
    private static final int KEPT = 0x2400; // up to arrows and mathematical signs
    private static final int UNKNOWN = -1;
    private static final int NO_GLYPH = -2;

    private final BaseFont font;
    private final int[] advances = new int[KEPT];

    FontMetrics(BaseFont font) {
        this.font = font;
        Arrays.fill(advances, UNKNOWN);
    }

    BaseFont font() {
        return font;
    }

    boolean has(int sign) {
        return look(sign) != NO_GLYPH;
    }

    /** Room of a sign that is there, in thousandths of the size. */
    int advance(int sign) {
        return look(sign);
    }

    private int look(int sign) {
        if (sign >= KEPT) {
            return measured(sign);
        }
        int known = advances[sign];
        if (known == UNKNOWN) {
            known = measured(sign);
            advances[sign] = known;
        }
        return known;
    }

    private int measured(int sign) {
        return font.charExists(sign) ? font.getWidth(Character.toString(sign)) : NO_GLYPH;
    }
}
