package groupwright.documents.charts;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.Point2D;
import java.util.EnumMap;
import java.util.Map;

/**
 * Writes text in windows and pictures. Digits stand in the room of a zero, which Java's own text cannot be asked for. A text
 * with letters that Inter lacks, such as a name in another script, is written in a font of the system.
 */
public final class ScreenLettering implements Lettering {
    /** Widths do not depend on the device, so that a chart breaks and aligns alike at every scale. */
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private final Map<InterFont, Font> fonts = new EnumMap<>(InterFont.class);

    /** Reads the fonts; keep one for all charts. */
    public ScreenLettering() {
        for (InterFont font : InterFont.values()) {
            fonts.put(font, font.read());
        }
    }

    @Override
    public double width(String text, InterFont font, double size) {
        if (text.isEmpty()) {
            return 0;
        }
        GlyphVector glyphs = glyphs(text, font, size);
        return glyphs.getGlyphPosition(glyphs.getNumGlyphs()).getX();
    }

    @Override
    public void write(
            Graphics2D graphics, String text, double x, double baseline, InterFont font, double size, Color colour) {
        graphics.setColor(colour);
        graphics.drawGlyphVector(glyphs(text, font, size), (float) x, (float) baseline);
    }

    private Font font(String text, InterFont face) {
        Font font = fonts.get(face);
        if (font.canDisplayUpTo(text) < 0) {
            return font;
        }
        return new Font(Font.DIALOG, face == InterFont.SEMIBOLD ? Font.BOLD : Font.PLAIN, 1);
    }

    private GlyphVector glyphs(String text, InterFont face, double size) {
        Font font = font(text, face).deriveFont((float) size);
        double zero = font.createGlyphVector(CONTEXT, "0").getGlyphMetrics(0).getAdvanceX();
        GlyphVector glyphs = font.createGlyphVector(CONTEXT, text); // without shaping: one glyph for each char
        double x = 0;
        for (int i = 0; i < glyphs.getNumGlyphs(); i++) {
            double advance = glyphs.getGlyphMetrics(i).getAdvanceX();
            boolean digit = text.charAt(i) >= '0' && text.charAt(i) <= '9';
            double room = digit ? zero : advance;
            glyphs.setGlyphPosition(i, new Point2D.Double(x + (room - advance) / 2, 0));
            x += room;
        }
        glyphs.setGlyphPosition(glyphs.getNumGlyphs(), new Point2D.Double(x, 0));
        return glyphs;
    }
}
