package groupwright.drivetrain.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitCostTest {
    @ParameterizedTest(name = "{0} and {1} over 60 000 sets: {3}")
    @CsvSource(textBlock = """
            # Three invented sets with 1.5 % scrap, independent script: pieces, tooling, tooling a set, total
            126.20, 832000, 13.87, 141.96
            115.45, 1136000, 18.93, 136.12
            119.50, 1171000, 19.52, 140.81
            """)
    void scrapFallsOnPiecesAndNotOnTooling(double pieces, double tooling, double toolingASet, double total) {
        UnitCost cost = UnitCost.of(List.of(new PartCost(pieces, 1, tooling)), 0.015, 60_000);
        assertEquals(toolingASet, cost.tooling(), 0.005);
        assertEquals(total, cost.total(), 0.005);
    }

    @Test
    void rejectsMakeMoreScrapThanTheirShare() {
        // of 5 pieces made 1 is rejected: 4 good ones, 0.25 scrapped for each
        assertEquals(0.25, UnitCost.scrapShareOfRejects(0.2), 1e-12);
        assertEquals(0, UnitCost.scrapShareOfRejects(0));
        assertThrows(IllegalArgumentException.class, () -> UnitCost.scrapShareOfRejects(1));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void partsAddUpAndVolumeThinsToolingOnly(long seed) {
        var random = new Random(seed);
        var a = new PartCost(Seeds.between(random, 0, 40), random.nextInt(4), Seeds.between(random, 0, 2e5));
        var b = new PartCost(Seeds.between(random, 0, 40), random.nextInt(4), Seeds.between(random, 0, 2e5));
        double scrap = Seeds.between(random, 0, 0.1);
        double volume = Seeds.between(random, 1, 1e5);
        double sum = UnitCost.of(List.of(a), scrap, volume).total()
                + UnitCost.of(List.of(b), scrap, volume).total();
        UnitCost both = UnitCost.of(List.of(a, b), scrap, volume);
        assertEquals(sum, both.total(), 1e-9 * sum);
        UnitCost more = UnitCost.of(List.of(a, b), scrap, 2 * volume);
        assertEquals(both.tooling() / 2, more.tooling(), 1e-9 * sum);
        assertEquals(both.pieces() + both.scrap(), more.pieces() + more.scrap());
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PartCost(-1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new PartCost(1, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> UnitCost.of(List.of(), 0, 0));
        assertThrows(IllegalArgumentException.class, () -> UnitCost.of(List.of(), Double.NaN, 1));
        assertEquals(0, UnitCost.of(List.of(), 0.015, 60_000).total());
    }
}
