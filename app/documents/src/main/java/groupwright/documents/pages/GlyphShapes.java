package groupwright.documents.pages;

import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Outlines of glyphs, from the same files that PDFs embed. Screens fill them: no hinting moves a letter. */
final class GlyphShapes {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
    private static final int THOUSANDTHS = 1000;

    private final Map<Glyph, Shape> shapes = new ConcurrentHashMap<>();

    private record Glyph(Face face, Style.Digits digits, int sign) {}

    /** A run with its baseline starting at a point. */
    Shape outline(Run run, FontShelf shelf, double x, double baseline) {
        Style style = run.style();
        double scale = style.size() / THOUSANDTHS;
        Path2D outline = new Path2D.Double(Path2D.WIND_NON_ZERO);
        double at = 0;
        for (int sign : run.text().codePoints().toArray()) {
            AffineTransform place = new AffineTransform(scale, 0, 0, scale, x + at * scale, baseline - style.rise());
            outline.append(shape(shelf, style, sign).getPathIterator(place), false);
            at += shelf.advance(sign, style);
        }
        return outline;
    }

    private Shape shape(FontShelf shelf, Style style, int sign) {
        return shapes.computeIfAbsent(
                new Glyph(style.face(), style.digits(), sign),
                glyph -> shelf.outlines(style)
                        .deriveFont((float) THOUSANDTHS)
                        .createGlyphVector(CONTEXT, Character.toString(sign))
                        .getOutline());
    }
}
