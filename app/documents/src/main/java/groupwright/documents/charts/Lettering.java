package groupwright.documents.charts;

import java.awt.Color;
import java.awt.Graphics2D;

/** Writes text: windows and pictures as glyphs, pages as text that can be searched and copied. */
public interface Lettering extends TextWidths {
    /** Writes a text that starts at {@code x}. */
    void write(Graphics2D graphics, String text, double x, double baseline, InterFont font, double size, Color colour);
}
