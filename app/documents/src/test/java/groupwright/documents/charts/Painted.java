package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** A chart's body painted four times as large as on a screen, to be probed where its layout says things stand. */
final class Painted {
    static final ScreenLettering LETTERING = new ScreenLettering();
    private static final int SCALE = 4;
    private static final int LIKE = 60;

    private final BufferedImage image;

    Painted(Chart chart, double width) {
        ChartSize size = chart.size(LETTERING, width);
        image = new BufferedImage(
                (int) Math.ceil(size.width() * SCALE),
                (int) Math.ceil(size.height() * SCALE),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(Palette.PAPER.surface());
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(SCALE, SCALE);
        chart.paint(new Pen(graphics, LETTERING, Palette.PAPER), size.width());
        graphics.dispose();
    }

    Color at(double x, double y) {
        return new Color(image.getRGB((int) (x * SCALE), (int) (y * SCALE)));
    }

    void assertColour(Color expected, double x, double y, String what) {
        assertEquals(expected, at(x, y), what + " at " + x + ", " + y);
    }

    /** Whether a colour, or nearly, occurs in a rectangle. */
    boolean has(Color colour, double left, double top, double right, double bottom) {
        return count(colour, left, top, right, bottom) > 0;
    }

    /** Area in which a colour, or nearly, occurs, in pixels of scale 1. */
    double count(Color colour, double left, double top, double right, double bottom) {
        int count = 0;
        for (int x = (int) (left * SCALE); x < right * SCALE; x++) {
            for (int y = (int) (top * SCALE); y < bottom * SCALE; y++) {
                Color found = new Color(image.getRGB(x, y));
                int away = Math.abs(found.getRed() - colour.getRed())
                        + Math.abs(found.getGreen() - colour.getGreen())
                        + Math.abs(found.getBlue() - colour.getBlue());
                count += away <= LIKE ? 1 : 0;
            }
        }
        return (double) count / (SCALE * SCALE);
    }
}
