package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.charts.TrailMap.Layer;
import groupwright.documents.charts.TrailMap.Station;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TrailMapTest {
    private static final TrailMap MAP = new TrailMap(
            "Trail of R-007",
            "from what riders said to what is claimed",
            List.of(
                    new Layer("said", List.of(), "no need"),
                    new Layer("asked", List.of(new Station("R-007", "The gear range shall be at least 480 %.")), ""),
                    new Layer(
                            "kept at",
                            List.of(new Station("C-002.cogs", "10 12 14"), new Station("C-002.rings", "32")),
                            "")));

    @Test
    void aBrokenLayerSaysSoAndItsDotIsHollow() {
        TrailMapLayout layout = TrailMapLayout.of(MAP, Painted.LETTERING, 480);
        Painted painted = new Painted(MAP, 480);
        double first = layout.layers().get(0).top() + TrailMapLayout.PAD + TrailMapLayout.LINE / 2;
        double second = layout.layers().get(1).top() + TrailMapLayout.PAD + TrailMapLayout.LINE / 2;
        painted.assertColour(Palette.PAPER.surface(), TrailMapLayout.THREAD + 0.5, first, "middle of a hollow dot");
        painted.assertColour(Palette.PAPER.ink(), TrailMapLayout.THREAD + 0.5, second, "middle of a filled dot");
        assertEquals("said: no need; asked: R-007; kept at: C-002.cogs, C-002.rings.", MAP.description());
        assertEquals(List.of("said", "—", "no need"), MAP.table().rows().get(0));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noTextLeavesItsBoxAndNoBoxesOverlap(long seed) {
        Random random = new Random(seed);
        List<Layer> layers = IntStream.range(0, 1 + random.nextInt(6))
                .mapToObj(i -> new Layer("layer " + i, stations(random), "none"))
                .toList();
        TrailMap map = new TrailMap("t", "c", layers);
        TrailMapLayout layout = TrailMapLayout.of(map, Painted.LETTERING, 300 + random.nextInt(500));
        double bottom = 0;
        for (TrailMapLayout.PlacedLayer layer : layout.layers()) {
            assertTrue(layer.top() >= bottom, "seed " + seed);
            for (TrailMapLayout.PlacedStation station : layer.stations()) {
                assertTrue(station.x() + station.width() <= layout.width(), "seed " + seed);
                assertTrue(station.y() + station.height() <= layout.height(), "seed " + seed);
                bottom = Math.max(bottom, station.y() + station.height());
                for (String line : station.lines()) {
                    double width = Lettered.LABEL.width(line, Painted.LETTERING);
                    assertTrue(
                            width <= station.width() - 2 * TrailMapLayout.PAD,
                            "seed " + seed + ": \"" + line + "\" is " + width + " wide");
                }
                assertEquals(
                        2 * TrailMapLayout.PAD, station.height() - tallest(layer, station) * TrailMapLayout.LINE, 1e-9);
            }
        }
        new Painted(map, layout.width()); // paints without a complaint
    }

    private static int tallest(TrailMapLayout.PlacedLayer layer, TrailMapLayout.PlacedStation beside) {
        return layer.stations().stream()
                .filter(station -> station.y() == beside.y())
                .mapToInt(station -> station.lines().size())
                .max()
                .orElseThrow();
    }

    private static List<Station> stations(Random random) {
        return IntStream.range(0, random.nextInt(8))
                .mapToObj(i -> new Station("P-00" + i, words(random)))
                .toList();
    }

    private static String words(Random random) {
        return IntStream.range(0, random.nextInt(20))
                .mapToObj(i -> "w".repeat(1 + random.nextInt(40)))
                .collect(Collectors.joining(" "));
    }
}
