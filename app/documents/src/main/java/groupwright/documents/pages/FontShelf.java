package groupwright.documents.pages;

import com.lowagie.text.pdf.BaseFont;
import groupwright.documents.charts.TextWidths;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The faces pages are set in, each read when first asked for; keep one shelf for all documents. Several threads may lay
 * out and paint with it, while one of them writes files.
 */
public final class FontShelf {
    /** Thousandths of the size; more would read as a space when text is copied. */
    private static final double MOST_SHIFT = 80;

    private final Map<Face, BaseFont> drawn = new ConcurrentHashMap<>();
    private final Map<Face, BaseFont> tabular = new ConcurrentHashMap<>();
    private final Map<Face, Map<Integer, Integer>> widths = new ConcurrentHashMap<>();
    private final GlyphShapes shapes = new GlyphShapes();

    /**
     * The font to write a style with. Tabular digits are a font of their own whose digits all advance like the zero:
     * if gaps made up for narrow digits, programs that copy or search text would read {@code 1 .64}.
     */
    BaseFont font(Style style) {
        if (style.digits() == Style.Digits.PROPORTIONAL || style.face() == Face.MONO) {
            return drawn(style.face());
        }
        return tabular.computeIfAbsent(style.face(), face -> {
            BaseFont font = read(face);
            for (char digit = '0'; digit <= '9'; digit++) {
                font.setCharAdvance(digit, width(face, '0'));
            }
            return font;
        });
    }

    boolean has(Face face, int sign) {
        return drawn(face).charExists(sign);
    }

    /** Width of a sign as drawn, in thousandths of the size. */
    int width(Face face, int sign) {
        return widths.computeIfAbsent(face, key -> new ConcurrentHashMap<>())
                .computeIfAbsent(sign, key -> drawn(face).getWidth(Character.toString(sign)));
    }

    /** Room of a sign in thousandths of the size. */
    double advance(int sign, Style style) {
        return width(style.face(), hasRoomOfZero(sign, style) ? '0' : sign);
    }

    /** How far a digit stands inside its room, in thousandths of the size: near the middle of that of a zero. */
    double shift(int sign, Style style) {
        return hasRoomOfZero(sign, style)
                ? Math.min(MOST_SHIFT, (width(style.face(), '0') - width(style.face(), sign)) / 2.0)
                : 0;
    }

    private static boolean hasRoomOfZero(int sign, Style style) {
        return style.digits() == Style.Digits.TABULAR && sign >= '0' && sign <= '9';
    }

    /** Measures text of charts in the faces of this shelf; for one thread. */
    public TextWidths chartWidths() {
        return new ChartWidths(new Typesetter(this, PageGeometry.of(PaperSize.A4)));
    }

    /** What glyphs look like. */
    GlyphShapes shapes() {
        return shapes;
    }

    private BaseFont drawn(Face face) {
        return drawn.computeIfAbsent(face, FontShelf::read);
    }

    private static BaseFont read(Face face) {
        String name = face.resource().substring(face.resource().lastIndexOf('/') + 1);
        try (InputStream stream = FontShelf.class.getResourceAsStream(face.resource())) {
            if (stream == null) {
                throw new IllegalStateException("the font " + face.resource() + " is not on the class path");
            }
            return BaseFont.createFont(
                    name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED, stream.readAllBytes(), null);
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + name + " cannot be read", broken);
        }
    }
}
