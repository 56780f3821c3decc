package groupwright.documents.pages;

import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.Palette;
import groupwright.documents.content.Verdict;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages are read on grey copies, too. */
class GreyPagesTest {
    /** WCAG 2.1, success criterion 1.4.3. */
    private static final double TEXT = 4.5;
    /** WCAG 2.1, success criterion 1.4.11. */
    private static final double MARKS = 3;

    static Stream<Arguments> colours() {
        Stream<Arguments> fixed = Stream.of(
                Arguments.of("ink", Paper.INK, TEXT),
                Arguments.of("muted", Paper.MUTED, TEXT),
                Arguments.of("accent", Paper.ACCENT, TEXT),
                Arguments.of("edge", Paper.EDGE, MARKS),
                Arguments.of("bars that are not judged", Palette.PAPER.edge(), MARKS));
        Stream<Arguments> verdicts =
                Stream.of(Verdict.values()).map(verdict -> Arguments.of(verdict.name(), Paper.of(verdict), MARKS));
        Stream<Arguments> concepts =
                Palette.PAPER.concepts().stream().map(hue -> Arguments.of("concept " + hue, hue, MARKS));
        return Stream.concat(fixed, Stream.concat(verdicts, concepts));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("colours")
    void whatCarriesMeaningStandsOutFromPaper(String name, Color colour, double least) {
        double contrast = (luminance(Paper.WHITE) + 0.05) / (luminance(colour) + 0.05);
        assertTrue(contrast >= least, name + " has " + contrast);
    }

    /** WCAG 2.1, relative luminance. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    @ParameterizedTest
    @EnumSource(Verdict.class)
    void marksOfOtherVerdictsHaveOtherShapes(Verdict verdict) {
        for (Verdict other : Verdict.values()) {
            boolean bothClose = verdict.isTooCloseToCall() && other.isTooCloseToCall(); // the words tell these apart
            double share = differing(mark(verdict), mark(other));
            assertTrue(verdict == other || bothClose || share > 0.1, verdict + " and " + other + " differ in " + share);
        }
    }

    /** Share of the pixels that are dark in only one of two marks. */
    private static double differing(BufferedImage one, BufferedImage other) {
        int differing = 0;
        for (int x = 0; x < one.getWidth(); x++) {
            for (int y = 0; y < one.getHeight(); y++) {
                differing += dark(one, x, y) == dark(other, x, y) ? 0 : 1;
            }
        }
        return (double) differing / (one.getWidth() * one.getHeight());
    }

    private static boolean dark(BufferedImage picture, int x, int y) {
        return picture.getRaster().getSample(x, y, 0) < 190; // grey of 3:1 is 149
    }

    private static BufferedImage mark(Verdict verdict) {
        BufferedImage picture = new BufferedImage(48, 48, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = picture.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, 48, 48);
        graphics.scale(4, 4);
        VerdictPainter.paint(new ScreenCanvas(graphics, new FontShelf(), Set.of()), verdict, 0, 10.2, 12);
        graphics.dispose();
        return picture;
    }
}
