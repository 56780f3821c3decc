package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Series;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Gearing figures against published values and by hand; edges: one cog, equal ratios, no gear left. */
class GearFiguresTest {
    private static Asking about(String rings, String cogs, String more) {
        return Asking.about(
                Asking.record("C-001", "\"rings\": [%s], \"cogs\": [%s]%s".formatted(rings, cogs, more)),
                Asking.record("G-001", "\"beadSeat_mm\": 622, \"tyre_mm\": 32, \"cadenceMost_rpm\": 90"),
                Asking.record("G-002", "\"rollOut_mm\": 2000"));
    }

    @ParameterizedTest(name = "{0} to {1}")
    @CsvSource(textBlock = """
        # common practice, no source; identity
        10, 51, 510
        10, 42, 420
        9,  36, 400
        """)
    void rangeOfOneRing(int smallest, int largest, double pct) {
        Asking asking = about("32", smallest + ", " + largest, "");
        assertEquals(pct, asking.value("gear-range C-001"));
        assertEquals(Band.EXACT, asking.band("gear-range C-001"));
    }

    @Test
    void developmentOfAKnownSpeed() {
        // footnote to 16 CFR 1512.5: development is the distance of one crank turn; 6.67 m at 60 rpm are 24 km/h
        Asking asking = about("50", "15", "");
        assertEquals(6.67, asking.value("highest-development C-001 G-002"), 0.005);
        assertEquals(24, asking.value("spin-out-speed C-001 G-002 cadence=60"), 1e-9);
    }

    @ParameterizedTest(name = "{0} x {1}")
    @CsvSource(textBlock = """
        # 32-622 tyre of 686 mm; digits recomputed by an independent script
        50, 11, 9.7961
        50, 25, 4.3103
        34, 34, 2.1551
        32, 51, 1.3522
        """)
    void developmentByMarking(String ring, String cog, double metres) {
        assertEquals(metres, about(ring, cog, "").value("lowest-development C-001 G-001"), 5e-5);
        assertEquals(metres, about(ring, cog, "").value("highest-development C-001 G-001"), 5e-5);
    }

    @Test
    void spinOutTakesTheRidersFastestCadence() {
        // 50 x 11 on 32-622 at 90 rpm: 52.899 km/h, recomputed by an independent script
        assertEquals(52.899, about("50", "11", "").value("spin-out-speed C-001 G-001"), 5e-4);
    }

    @Test
    void likePositionsAreTheGreatestCommonDivisor() {
        // gcd: 11/12 1, 12/14 2, 14/16 2, 16/20 4, 20/24 4, 24/28 4, 28/32 4, 32/36 4, 36/42 6 (identities)
        Series series =
                (Series) about("32", "11,12,14,16,20,24,28,32,36,42", "").answer("like-positions C-001");
        assertEquals(List.of(1.0, 2.0, 2.0, 4.0, 4.0, 4.0, 4.0, 4.0, 6.0), values(series));
        assertEquals("36-42", series.values().get(8).at());
        assertEquals("1/turn", series.unit().symbol());
    }

    private static List<Double> values(Series series) {
        return series.values().stream().map(Series.At::value).toList();
    }

    @Test
    void stepsCountFromTheTeethAskedFor() {
        Asking asking = about("32", "10, 12, 14, 17", "");
        assertEquals(21.428571, asking.value("largest-step C-001"), 1e-6); // 17/14
        assertEquals("14-17", asking.quantity("largest-step C-001").remark());
        assertEquals(19.365079, asking.value("mean-step C-001"), 1e-6); // (20 + 100/6 + 300/14) / 3
        assertEquals(4.761905, asking.value("step-change C-001"), 1e-6); // 300/14 - 100/6
        assertEquals(asking.value("largest-step C-001"), asking.value("mean-step C-001 from-teeth=14"), 1e-12);
        assertEquals(0, asking.value("step-unevenness C-001 from-teeth=14"), 1e-12);
    }

    @Test
    void geometricStepsAreEven() {
        Asking asking = about("32", "16, 24, 36", "");
        assertEquals(0, asking.value("step-unevenness C-001"), 1e-12);
        assertEquals(0, asking.value("step-change C-001"), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "largest-step",
                "mean-step",
                "step-unevenness",
                "step-change",
                "longest-wait",
                "phase-mismatch",
                "gear-range-without-smallest",
                "sequence-step"
            })
    void oneCogHasNoStep(String figure) {
        var missing = about("32", "18", "").missing(figure + " C-001").get(0);
        assertEquals("C-001.cogs", missing.address().toString());
        assertTrue(missing.remedy().endsWith("cogs; add one"), missing.remedy());
    }

    @Test
    void oneCogIsAGearAllTheSame() {
        Asking asking = about(
                "32",
                "18",
                ", \"derailleur\": {\"overshootSmallest_mm\": 1, \"overshootLargest_mm\": 2}"
                        + ", \"cogSpacing_mm\": [4]");
        assertEquals(100, asking.value("gear-range C-001"));
        assertEquals(1, asking.value("gears C-001"));
        assertEquals(1, asking.value("distinct-gears C-001"));
        assertEquals(0, asking.value("total-capacity C-001"));
        assertEquals(3, asking.value("side-travel C-001"));
        assertEquals(List.of(), values((Series) asking.answer("like-positions C-001")));
    }

    @Test
    void tooFewCogsFromTheTeethAskedForSaySo() {
        var missing = about("32", "10, 12, 14", "")
                .missing("step-change C-001 from-teeth=12")
                .get(0);
        assertEquals("there are fewer than 3 cogs from 12 teeth upwards; add one", missing.remedy());
    }

    @Test
    void equalRatiosAreOneDistinctGear() {
        Asking asking = about("40, 20", "10, 20", ""); // 4, 2, 2, 1
        assertEquals(4, asking.value("gears C-001"));
        assertEquals(3, asking.value("distinct-gears C-001"));
        assertEquals(100, asking.value("sequence-step C-001"), 1e-12);
    }

    @Test
    void distinctGearsFollowTheProjectsThreshold() {
        Asking asking = Asking.about(
                Asking.record("project", "\"name\": \"Test\", \"distinctGears_pct\": 12"),
                Asking.record("C-001", "\"rings\": [32], \"cogs\": [20, 22, 25]"));
        assertEquals(2, asking.value("distinct-gears C-001")); // 22/25 is 13.6 % away, 20/22 only 10 %
    }

    @Test
    void excludedGearsLeaveRangeAndCapacity() {
        Asking asking = about("40, 20", "10, 20, 30", """
                , "excludedGears": [{"id": "a", "ring": 20, "cog": 30}, {"id": "b", "ring": 40, "cog": 30}]""");
        assertEquals(4, asking.value("gears C-001"));
        assertEquals(400, asking.value("gear-range C-001")); // 4 to 1
        assertEquals(40, asking.value("total-capacity C-001"));
        assertEquals(30, asking.value("total-capacity-in-use C-001")); // 40 + 20 - (20 + 10)
    }

    @Test
    void everyGearExcludedIsMissingInput() {
        Asking asking = about("32", "18", ", \"excludedGears\": [{\"id\": \"a\", \"ring\": 32, \"cog\": 18}]");
        for (String figure : List.of("gear-range", "gears", "distinct-gears", "total-capacity-in-use")) {
            assertEquals(
                    "C-001.excludedGears",
                    asking.missing(figure + " C-001").get(0).address().toString(),
                    figure);
        }
    }

    @Test
    void spacingMayDifferFromGapToGap() {
        Asking asking = about("32", "10, 12, 14", """
                , "cogSpacing_mm": [3.5, {"value": 4, "plusMinus": 0.2}],
                "derailleur": {"overshootSmallest_mm": 1, "overshootLargest_mm": 2, "hangerTolerance_mm": 0.5}""");
        assertEquals(11, asking.value("side-travel C-001"), 1e-12);
        assertEquals(Band.around(11, 0.2), rounded(asking.band("side-travel C-001")));
    }

    private static Band rounded(Band band) {
        Band.Between between = (Band.Between) band;
        return new Band.Between(Math.rint(between.low() * 1e9) / 1e9, Math.rint(between.high() * 1e9) / 1e9);
    }
}
