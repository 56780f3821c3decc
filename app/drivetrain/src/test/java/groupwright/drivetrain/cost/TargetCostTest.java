package groupwright.drivetrain.cost;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class TargetCostTest {
    private static SalesChannel channel(double price, double margin) {
        return new SalesChannel(price, 0, List.of(margin), 1);
    }

    @Test
    void profitAsAShareOfThePrice() {
        // Weygandt, Kimmel, Kieso, Managerial Accounting, Example 8-1: 20 less 30 % is 14
        assertEquals(14, TargetCost.ofProfit(20, 0.3 * 20), 1e-12);
        assertEquals(14, channel(20, 0.3).targetCost(), 1e-12);
    }

    @Test
    void profitAsAReturnOnInvestment() {
        // the same, Example 8-2: 8 000 000 at 20 % over 100 000 units is 16, and 90 leaves 74
        double profit = TargetCost.profitOfReturn(8_000_000, 0.2, 100_000);
        assertEquals(16, profit, 1e-12);
        assertEquals(74, TargetCost.ofProfit(90, profit), 1e-12);
    }

    @Test
    void marginOnThePrice() {
        // Horngren's Financial and Managerial Accounting, 6th ed., 19-3: 12.50 at 20 % is 10.00
        assertEquals(10, channel(12.5, 0.2).targetCost(), 1e-12);
    }

    @Test
    void taxComesOffBeforeMarginsAndMarginsMultiply() {
        // by hand: 238 with 19 % tax is 200; the dealer keeps half, 100; 10 % of that is ours, 90
        assertEquals(90, new SalesChannel(238, 0.19, List.of(0.5, 0.1), 1).targetCost(), 1e-9);
        assertEquals(90, new SalesChannel(238, 0.19, List.of(0.1, 0.5), 1).targetCost(), 1e-9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void aMixLiesBetweenItsChannelsAndOnlySharesMatter(long seed) {
        var random = new Random(seed);
        double share = Seeds.between(random, 0.01, 0.99);
        double scale = Seeds.between(random, 0.1, 1e5);
        double low = Seeds.between(random, 50, 100);
        double high = Seeds.between(random, 100, 300);
        double mix = TargetCost.ofMix(
                List.of(new SalesChannel(low, 0, List.of(), share), new SalesChannel(high, 0, List.of(), 1 - share)));
        assertEquals(share * low + (1 - share) * high, mix, 1e-9);
        assertTrue(low <= mix && mix <= high);
        double scaled = TargetCost.ofMix(List.of(
                new SalesChannel(low, 0, List.of(), share * scale),
                new SalesChannel(high, 0, List.of(), (1 - share) * scale)));
        assertEquals(mix, scaled, 1e-9);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> TargetCost.ofMix(List.of()));
        assertThrows(IllegalArgumentException.class, () -> TargetCost.profitOfReturn(1, 0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> channel(20, 30)); // percent for a share
        assertThrows(IllegalArgumentException.class, () -> channel(-1, 0.3));
        assertThrows(IllegalArgumentException.class, () -> new SalesChannel(1, 0, List.of(), 0));
        assertEquals(-6, TargetCost.ofProfit(10, 16));
    }
}
