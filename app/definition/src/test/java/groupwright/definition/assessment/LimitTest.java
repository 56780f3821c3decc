package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Verdict;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One value against one limit. */
class LimitTest {
    private static final String ASK = "criterion-verdict C-001 R-001 criterion=k1";

    /** A requirement with one criterion about a test result with this value. */
    private static Scene scene(String comparator, double target, String rest, String value) {
        return Scene.of(
                Scene.record("C-001", "\"rings\": [30], \"cogs\": [15]"), Scene.requirement("R-001", """
                        "criteria": [%s],
                        "results": [{"id": "t1", "concept": "C-001", "quantity": "q", "value": %s, "unit": "N"}]""".formatted(
                                Scene.criterion("k1", "test-result quantity=q", comparator, target, rest), value)));
    }

    @ParameterizedTest(name = "{3} ± {4} {0} {1} {2}")
    @CsvSource(delimiter = '|', nullValues = "none", textBlock = """
        # Source: plain arithmetic. comparator | target | upper | value | plus-minus | words | margin | percent
        at-least | 50  | none | 57.1  | 0   | meets                     | 7.1   | 14.2
        at-least | 50  | none | 48    | 0   | misses                    | -2    | -4
        at-least | 50  | none | 50    | 0   | meets                     | 0     | 0
        at-most  | 18  | none | 18.75 | 0   | misses                    | -0.75 | -4.166666667
        at-most  | 20  | none | 15    | 0   | meets                     | 5     | 25
        at-most  | 20  | none | 20    | 0   | meets                     | 0     | 0
        between  | 10  | 20   | 12    | 0   | meets                     | 2     | 20
        between  | 10  | 20   | 19    | 0   | meets                     | 1     | 5
        between  | 10  | 20   | 8     | 0   | misses                    | -2    | -20
        between  | 10  | 20   | 25    | 0   | misses                    | -5    | -25
        between  | 10  | 20   | 10    | 0   | meets                     | 0     | 0
        between  | 10  | 20   | 20    | 0   | meets                     | 0     | 0
        between  | 10  | 10   | 10    | 0   | meets                     | 0     | 0
        # a target of 0 has no percent
        at-most  | 0   | none | 0     | 0   | meets                     | 0     | none
        at-most  | 0   | none | 2     | 0   | misses                    | -2    | none
        between  | 0   | 8    | 1     | 0   | meets                     | 1     | none
        between  | 0   | 8    | 7     | 0   | meets                     | 1     | 12.5
        # percent of a negative target keeps the sign of the margin
        at-least | -10 | none | -8    | 0   | meets                     | 2     | 20
        at-least | -10 | none | -12   | 0   | misses                    | -2    | -20
        # the target inside the band
        at-least | 50  | none | 51    | 1.5 | meets, too close to call  | 1     | 2
        at-least | 50  | none | 49    | 1.5 | misses, too close to call | -1    | -2
        at-least | 50  | none | 50    | 0.5 | meets, too close to call  | 0     | 0
        at-most  | 50  | none | 49    | 1.5 | meets, too close to call  | 1     | 2
        at-most  | 50  | none | 51    | 1.5 | misses, too close to call | -1    | -2
        between  | 10  | 20   | 19    | 2   | meets, too close to call  | 1     | 5
        between  | 10  | 20   | 11    | 2   | meets, too close to call  | 1     | 10
        between  | 10  | 20   | 21    | 2   | misses, too close to call | -1    | -5
        # the target at the edge of the band, or beyond
        at-least | 50  | none | 51    | 1   | meets                     | 1     | 2
        at-least | 50  | none | 51    | 0.5 | meets                     | 1     | 2
        at-least | 50  | none | 49    | 1   | misses                    | -1    | -2
        between  | 10  | 20   | 15    | 4   | meets                     | 5     | 50
        """)
    void comparesAValueWithItsLimit(
            String comparator,
            double target,
            Double upper,
            double value,
            double plusMinus,
            String words,
            double margin,
            Double percent) {
        String rest = upper == null ? "" : "\"upper\": " + upper; // as the table says
        Verdict verdict = scene(
                        comparator, target, rest, "{\"value\": " + value + ", \"plusMinus\": " + plusMinus + "}")
                .verdict(ASK);
        assertEquals(words, verdict.words());
        assertEquals(margin, verdict.margin(), 1e-12);
        assertEquals(percent != null, verdict.marginPct().isPresent());
        verdict.marginPct().ifPresent(pct -> assertEquals(percent, pct, 1e-8));
        assertEquals(plusMinus > 0 ? Band.around(value, plusMinus) : Band.NOT_STATED, verdict.band());
    }

    @ParameterizedTest(name = "{0} {2} {3}")
    @CsvSource(delimiter = '|', textBlock = """
        # Source: plain arithmetic: 19/16 = 38/32 = 1.1875, 11/10 = 1.1, 23/20 = 1.15
        16, 19     | largest-step | at-most  | 18.75
        32, 38     | largest-step | at-most  | 18.75
        10, 11     | largest-step | at-most  | 10
        10, 11     | largest-step | at-least | 10
        20, 23     | largest-step | at-least | 15
        20, 23     | largest-step | at-most  | 15
        16, 19     | gear-range   | at-least | 118.75
        """)
    void aTargetExactlyMetIsMetWithoutMargin(String cogs, String figure, String comparator, double target) {
        Verdict verdict = Scene.of(
                        Scene.record("C-001", "\"rings\": [30], \"cogs\": [" + cogs + "]"),
                        Scene.requirement(
                                "R-001",
                                "\"criteria\": [" + Scene.criterion("k1", figure, comparator, target, "") + "]"))
                .verdict(ASK);
        assertEquals("meets", verdict.words());
        assertEquals(0.0, verdict.margin()); // plus zero, bit for bit
        assertEquals(Optional.of(0.0), verdict.marginPct());
        assertEquals(Band.EXACT, verdict.band());
    }

    @ParameterizedTest(name = "{0} times {1} {2} {3}")
    @CsvSource(textBlock = """
        # in binary 1.1 * 11 is 12.100000000000001 and 1.15 * 11 is 12.649999999999999
        1.1,  11, at-most,  12.1
        1.1,  11, at-least, 12.1
        1.15, 11, at-least, 12.65
        1.15, 11, at-most,  12.65
        """)
    void roundingBreaksNoTarget(double times, int teeth, String comparator, double target) {
        Verdict verdict = Scene.of(
                        Scene.record("C-001", "\"rings\": [" + teeth + "], \"cogs\": [10]"),
                        Scene.requirement(
                                "R-001",
                                "\"criteria\": [" + Scene.criterion("k1", "toy-teeth", comparator, target, "") + "]"))
                .under(ToyFigures.catalogue(1, times))
                .verdict(ASK);
        assertEquals("meets", verdict.words());
        assertEquals(0.0, verdict.margin(), verdict.value()::toString);
    }

    @Test
    void aDifferenceAboveRoundingIsADifference() {
        assertEquals(
                "misses", scene("at-most", 18.75, "", "18.7500001").verdict(ASK).words());
        assertTrue(scene("at-most", 18.75, "", "18.7500001").verdict(ASK).margin() < 0);
        assertEquals(
                "misses", scene("at-least", 0.001, "", "0.00099").verdict(ASK).words());
    }

    @ParameterizedTest(name = "limit in {0}")
    @CsvSource(delimiter = '|', textBlock = """
        rpm | R-001.criteria.k1.unit: the limit is in rpm, but the figure is in N; write the limit in N
        n   | R-001.criteria.k1.unit: the limit is in n, but the figure is in N; write the limit in N
        """)
    void aLimitInAnotherUnitCannotBeCompared(String unit, String expected) {
        Scene scene = scene("at-most", 22, "\"unit\": \"" + unit + "\"", "20");
        assertEquals("missing input", scene.verdict(ASK).words());
        assertEquals(expected, scene.missing(ASK));
    }

    @Test
    void aBareNumberTakesNoUnit() {
        Scene scene = Scene.of(
                Scene.record("C-001", "\"rings\": [30], \"cogs\": [15]"),
                Scene.requirement(
                        "R-001",
                        "\"criteria\": [" + Scene.criterion("k1", "gears", "at-least", 1, "\"unit\": \"N\"") + "]"));
        assertEquals(
                "R-001.criteria.k1.unit: the limit is in N, but the figure is a bare number; leave the unit out",
                scene.missing(ASK));
    }

    @Test
    void theFiguresOwnUnitMayBeWrittenOrLeftOut() {
        assertEquals(
                "meets",
                scene("at-most", 22, "\"unit\": \"N\"", "20").verdict(ASK).words());
        assertEquals("meets", scene("at-most", 22, "", "20").verdict(ASK).words());
    }
}
