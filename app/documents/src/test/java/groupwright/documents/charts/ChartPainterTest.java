package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

class ChartPainterTest {
    private static final Palette NIGHT = new Palette(
            new Color(0x191E1B),
            new Color(0xE3E9E5),
            new Color(0x9DA9A2),
            new Color(0x7A877F),
            new Color(0x353E39),
            new Color(0xB5ABF6),
            new Color(0x2BB58C),
            new Color(0xE8772A),
            new Color(0xD6DEE6),
            new Color(0x9DA9A2),
            List.of(new Color(0x56B4E9), new Color(0xE69F00)));

    private static boolean has(BufferedImage picture, Color colour) {
        for (int x = 0; x < picture.getWidth(); x++) {
            for (int y = 0; y < picture.getHeight(); y++) {
                if ((picture.getRGB(x, y) & 0xFFFFFF) == (colour.getRGB() & 0xFFFFFF)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void aThemeGivesAllColours() {
        BufferedImage picture = new ChartPainter(Painted.LETTERING, NIGHT).picture(SampleCharts.bars(), 520, 2);
        for (Color colour : List.of(
                NIGHT.surface(),
                NIGHT.ink(),
                NIGHT.edge(),
                NIGHT.misses(),
                NIGHT.concepts().get(1))) {
            assertTrue(has(picture, colour), colour.toString());
        }
        for (Color colour : List.of(Palette.PAPER.surface(), Palette.PAPER.misses(), Palette.PAPER.edge())) {
            assertTrue(!has(picture, colour), colour.toString());
        }
    }

    @Test
    void twiceTheScaleIsTwiceThePicture() {
        ChartPainter painter = new ChartPainter(Painted.LETTERING, Palette.PAPER);
        BufferedImage once = painter.picture(SampleCharts.ladder(), 720, 1);
        BufferedImage twice = painter.picture(SampleCharts.ladder(), 720, 2);
        assertEquals(720, once.getWidth());
        assertEquals(2 * once.getWidth(), twice.getWidth());
        assertEquals(2 * once.getHeight(), twice.getHeight());
    }

    @Test
    void equalChartsPaintAlike() {
        ChartPainter painter = new ChartPainter(Painted.LETTERING, Palette.PAPER);
        BufferedImage one = painter.picture(SampleCharts.ladder(), 500, 1);
        BufferedImage other = painter.picture(SampleCharts.ladder(), 500, 1);
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                assertEquals(one.getRGB(x, y), other.getRGB(x, y));
            }
        }
    }

    @Test
    void aCaptionWithoutRoomStandsBelowTheTitle() {
        ChartPainter painter = new ChartPainter(Painted.LETTERING, Palette.PAPER);
        double beside = painter.size(SampleCharts.ladder(), 900).height();
        double below = painter.size(SampleCharts.ladder(), 500).height();
        double body = SampleCharts.ladder().size(Painted.LETTERING, 500).height()
                - SampleCharts.ladder().size(Painted.LETTERING, 900).height();
        assertEquals(17, below - beside - body, 1e-9);
    }

    @Test
    void digitsAreAllAsWideAsTheZero() {
        for (InterFont font : InterFont.values()) {
            double zero = Painted.LETTERING.width("0", font, 11);
            for (char digit = '1'; digit <= '9'; digit++) {
                assertEquals(zero, Painted.LETTERING.width(Character.toString(digit), font, 11), 1e-6);
            }
            assertEquals(3 * zero, Painted.LETTERING.width("111", font, 11), 1e-6);
        }
    }
}
