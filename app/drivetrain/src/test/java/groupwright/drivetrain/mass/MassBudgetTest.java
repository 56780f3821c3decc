package groupwright.drivetrain.mass;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MassBudgetTest {
    private static PartMass spread(double grams) {
        return new PartMass(100, 1, 0, grams);
    }

    private static MassBudget budget(Random random) {
        return new MassBudget(Stream.generate(() -> new PartMass(
                        Seeds.between(random, 0, 500),
                        random.nextInt(4),
                        Seeds.between(random, 0, 0.3),
                        Seeds.between(random, 0, 20)))
                .limit(random.nextInt(30))
                .toList());
    }

    @Test
    void independentSpreadsAddInSquare() {
        // identity: 3, 4, 5
        var budget = new MassBudget(List.of(spread(3), spread(4)));
        assertEquals(5, budget.spreadG(0), 1e-12);
        assertEquals(7, budget.spreadG(1), 1e-12);
        // the normal distribution's 0.9 quantile in tables: 1.28155
        assertEquals(200 + 1.28155 * 5, budget.p90G(0), 1e-4);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void closedFormIsTheDoubleSumOfCovariances(long seed) {
        var random = new Random(seed);
        var budget = budget(random);
        double rho = random.nextDouble();
        double variance = 0;
        for (int i = 0; i < budget.parts().size(); i++) {
            for (int j = 0; j < budget.parts().size(); j++) {
                double s =
                        budget.parts().get(i).spreadG() * budget.parts().get(j).spreadG();
                variance += i == j ? s : rho * s;
            }
        }
        assertEquals(Math.sqrt(variance), budget.spreadG(rho), 1e-9);
        assertTrue(budget.spreadG(0) <= budget.spreadG(rho) + 1e-9);
        assertTrue(budget.spreadG(rho) <= budget.spreadG(1) + 1e-9);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void twoPiecesWeighAsMuchAsTwoSetsOfOne(long seed) {
        var random = new Random(seed);
        var part = new PartMass(Seeds.between(random, 1, 500), 1, 0.08, Seeds.between(random, 0, 9));
        var two = new MassBudget(List.of(new PartMass(part.pieceG(), 2, 0.08, part.pieceSpreadG())));
        assertEquals(2 * part.basicG(), two.basicG(), 1e-9);
        assertEquals(2 * part.predictedG(), two.predictedG(), 1e-9);
        assertEquals(new MassBudget(List.of(part, part)).spreadG(1), two.spreadG(0), 1e-9);
    }

    @Test
    void growthAllowanceByBasis() {
        // An invented set; allowance 8 % estimated, 4 % calculated, none weighed; sums by an independent script
        double estimated = 62 + 54 + 122 + 178 + 74;
        double calculated = 58 + 24 + 182 + 238 + 206 + 104;
        var set = new MassBudget(List.of(
                new PartMass(estimated, 1, 0.08, 0),
                new PartMass(calculated, 1, 0.04, 0),
                new PartMass(13, 2, 0, 0),
                new PartMass(9 + 262 + 84 + 74, 1, 0, 0)));
        assertEquals(1757, set.basicG(), 0.5);
        assertEquals(1829, set.predictedG(), 0.5);
        assertEquals(1.3, set.marginG(1830), 0.05);
    }

    @Test
    void noPartsWeighNothing() {
        var nothing = new MassBudget(List.of());
        assertEquals(0, nothing.predictedG());
        assertEquals(0, nothing.p90G(MassBudget.DEFAULT_CORRELATION));
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PartMass(-1, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new PartMass(1, -1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new PartMass(1, 1, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new PartMass(1, 1, 0, -1));
        var budget = new MassBudget(List.of());
        assertThrows(IllegalArgumentException.class, () -> budget.spreadG(1.1));
        assertThrows(IllegalArgumentException.class, () -> budget.spreadG(-0.1));
    }
}
