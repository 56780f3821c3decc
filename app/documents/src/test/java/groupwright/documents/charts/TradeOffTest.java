package groupwright.documents.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.documents.numbers.Reader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Four invented solutions; the edge by looking. */
class TradeOffTest {
    private static final double WIDTH = 600;
    private static final TradeOff CHART = of(
            Optional.of(2),
            point(300, 3, TradeOff.Mark.PASSES),
            point(310, 2, TradeOff.Mark.PASSES),
            point(320, 2.5, TradeOff.Mark.FAILS),
            point(330, 1, TradeOff.Mark.TODAY));

    private static TradeOff.Point point(double x, double y, TradeOff.Mark mark) {
        return new TradeOff.Point(x, y, "", mark);
    }

    private static TradeOff of(Optional<Integer> selected, TradeOff.Point... points) {
        return new TradeOff(
                new TradeOff.Axis("Weight", "g"),
                new TradeOff.Axis("Unevenness", "%"),
                List.of(points),
                selected,
                "pass: 3",
                "fail: 1",
                new Reader(Locale.ENGLISH));
    }

    @Test
    void whatAnotherBeatsInBothIsNotOnTheEdge() {
        assertEquals(
                List.of(300.0, 310.0, 330.0),
                CHART.edge().stream().map(TradeOff.Point::x).toList());
    }

    @Test
    void ofEqualWeightsTheEvenerIsOnTheEdge() {
        TradeOff equal = of(Optional.empty(), point(300, 3, TradeOff.Mark.PASSES), point(300, 2, TradeOff.Mark.PASSES));
        assertEquals(List.of(2.0), equal.edge().stream().map(TradeOff.Point::y).toList());
    }

    @Test
    void thePointUnderThePointerIsFound() {
        TradeOffLayout layout = TradeOffLayout.of(CHART, Painted.LETTERING, WIDTH);
        TradeOff.Point third = CHART.points().get(2);
        assertEquals(Optional.of(2), CHART.at(layout.x(third) + 3, layout.y(third) - 3, Painted.LETTERING, WIDTH));
        assertEquals(Optional.empty(), CHART.at(layout.x(third) + 30, layout.y(third), Painted.LETTERING, WIDTH));
    }

    @Test
    void marksStandWhereTheirValuesAre() {
        Painted painted = new Painted(CHART, WIDTH);
        TradeOffLayout layout = TradeOffLayout.of(CHART, Painted.LETTERING, WIDTH);
        TradeOff.Point first = CHART.points().get(0);
        painted.assertColour(Palette.PAPER.ink(), layout.x(first), layout.y(first), "a solid disc");
        TradeOff.Point failing = CHART.points().get(2);
        painted.assertColour(Palette.PAPER.surface(), layout.x(failing), layout.y(failing), "a hollow ring");
        painted.assertColour(Palette.PAPER.accent(), layout.x(failing) + 8, layout.y(failing), "selected");
    }

    @Test
    void oneSolutionIsDrawnToo() {
        TradeOff one = of(Optional.empty(), point(300, 0, TradeOff.Mark.TODAY));
        new Painted(one, WIDTH);
        assertEquals(1, one.edge().size());
        assertThrows(
                IllegalArgumentException.class,
                () -> of(Optional.of(1), one.points().get(0)));
        assertThrows(IllegalArgumentException.class, () -> of(Optional.empty()));
    }

    @Test
    void ticksAreRound() {
        LinearScale scale = LinearScale.over(new double[] {280, 345}, 0, 100);
        assertEquals(List.of(280.0, 300.0, 320.0, 340.0), scale.ticks(6));
        assertEquals(50, new LinearScale(0, 10, 0, 100).place(5));
    }
}
