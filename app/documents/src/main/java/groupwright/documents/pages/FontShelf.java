package groupwright.documents.pages;

import com.lowagie.text.pdf.BaseFont;
import groupwright.documents.charts.TextWidths;
import java.io.ByteArrayInputStream;
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
    private final Map<Face, FontMetrics> drawn = new ConcurrentHashMap<>();
    private final Map<Face, FontMetrics> tabular = new ConcurrentHashMap<>();
    private final Map<Face, java.awt.Font> drawnOutlines = new ConcurrentHashMap<>();
    private final Map<Face, java.awt.Font> tabularOutlines = new ConcurrentHashMap<>();
    private final GlyphShapes shapes = new GlyphShapes();

    /** The font to write a style with. Tabular digits are a font of their own, see {@link TabularFont}. */
    BaseFont font(Style style) {
        return metrics(style).font();
    }

    private FontMetrics metrics(Style style) {
        return isTabular(style) ? tabular(style.face()) : drawn(style.face());
    }

    /** Digits of the monospaced face are equally wide anyway. */
    private static boolean isTabular(Style style) {
        return style.digits() == Style.Digits.TABULAR && style.face() != Face.MONO;
    }

    boolean has(Face face, int sign) {
        return drawn(face).has(sign);
    }

    /** Room of a sign that is there, in thousandths of the size. */
    int advance(int sign, Style style) {
        return metrics(style).advance(sign);
    }

    /** The outlines a style is drawn with. */
    java.awt.Font outlines(Style style) {
        return isTabular(style)
                ? tabularOutlines.computeIfAbsent(style.face(), face -> outlines(TabularFont.of(bytes(face))))
                : drawnOutlines.computeIfAbsent(style.face(), face -> outlines(bytes(face)));
    }

    private static java.awt.Font outlines(byte[] font) {
        try {
            return java.awt.Font.createFont(java.awt.Font.TRUETYPE_FONT, new ByteArrayInputStream(font));
        } catch (java.awt.FontFormatException | IOException broken) {
            throw new IllegalStateException("a font of ours cannot be read", broken);
        }
    }

    /** Measures text of charts in the faces of this shelf; for one thread. */
    public TextWidths chartWidths() {
        return new ChartWidths(new Typesetter(this, PageGeometry.of(PaperSize.A4)));
    }

    /** What glyphs look like. */
    GlyphShapes shapes() {
        return shapes;
    }

    private FontMetrics drawn(Face face) {
        FontMetrics known = drawn.get(face); // no lambda is made where it is known, which is nearly always
        return known != null ? known : drawn.computeIfAbsent(face, any -> new FontMetrics(font(face, bytes(face))));
    }

    private FontMetrics tabular(Face face) {
        FontMetrics known = tabular.get(face);
        return known != null
                ? known
                : tabular.computeIfAbsent(face, any -> new FontMetrics(font(face, TabularFont.of(bytes(face)))));
    }

    private static String name(Face face) {
        return face.resource().substring(face.resource().lastIndexOf('/') + 1);
    }

    private static BaseFont font(Face face, byte[] bytes) {
        try {
            BaseFont font = BaseFont.createFont(
                    name(face), BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED, bytes, null);
            font.setIncludeCidSet(false); // it would have to name each glyph, and PDF/A-2 does not ask for it
            return font;
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + name(face) + " cannot be read", broken);
        }
    }

    private static byte[] bytes(Face face) {
        try (InputStream stream = FontShelf.class.getResourceAsStream(face.resource())) {
            if (stream == null) {
                throw new IllegalStateException("the font " + face.resource() + " is not on the class path");
            }
            return stream.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + name(face) + " cannot be read", broken);
        }
    }
}
