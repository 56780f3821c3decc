package groupwright.documents.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Amount;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Numbers in the measures of their reader. */
class MeasuredTest {
    private static final Reader METRIC = new Reader(Locale.ENGLISH);
    private static final Reader IMPERIAL = new Reader(Locale.ENGLISH, Measures.IMPERIAL);

    @ParameterizedTest(name = "{0} {1} with {2} decimals is {3} {4}")
    @CsvSource(textBlock = """
            # Source: international yard and pound agreement, 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, exact
            25.4,      mm,   1, 1.000,  in
            1609.344,  m,    0, 5280,   ft
            1.609344,  km,   2, 1.000,  mi
            80.4672,   km/h, 1, 50.00,  mph
            453.59237, g,    0, 16.00,  oz
            907.18474, kg,   0, 2000,   lb
            # the pound-force by the standard acceleration of 9.80665 m/s² (3rd CGPM, 1901)
            4.4482216152605, N, 1, 1.00, lbf
            # kept as entered, a whole number of newtons: one decimal is as fine
            9120,      N,    9, 2050.3, lbf
            # the same in both
            40,        N·m,  1, 40.0,   N·m
            250,       W,    0, 250,    W
            12.5,      %,    1, 12.5,   %
            """)
    void imperialUnits(double value, String unit, int decimals, String shown, String shownUnit) {
        Measured measured = IMPERIAL.in(unit);
        assertEquals(shown, measured.number(value, decimals));
        assertEquals(shownUnit, measured.unit());
        assertEquals(unit, METRIC.in(unit).unit());
        assertEquals(METRIC.number(value, decimals), METRIC.in(unit).number(value, decimals));
    }

    @Test
    void oneUnitWhateverTheNumber() {
        assertEquals("oz", IMPERIAL.in("g").unit());
        assertEquals("0.71", IMPERIAL.in("g").number(20, 0));
        assertEquals("70.55", IMPERIAL.in("g").number(2000, 0));
    }

    @Test
    void recordedAmountsKeepTheirPrecisionAndTheirBand() {
        assertEquals("17.13", IMPERIAL.in("mm").exact(435));
        assertEquals("17.146", IMPERIAL.in("mm").exact(435.5));
        assertEquals("17.126 ± 0.020", IMPERIAL.in("mm").amount(new Amount(435, 0.5)));
        assertEquals("435 ± 0.5", METRIC.in("mm").amount(new Amount(435, 0.5)));
        assertEquals("\u22120.04", IMPERIAL.in("mm").signed(-1, 0));
        assertEquals("+0.04", IMPERIAL.in("mm").signed(1, 0));
    }

    @Test
    void germanWritesItsOwnUnitWords() {
        Reader german = new Reader(Locale.GERMAN, Measures.IMPERIAL);
        assertEquals("Zähne", german.in("teeth").unit());
        assertEquals("1/min", german.in("rpm").unit());
        assertEquals("1/Umdrehung", german.in("1/turn").unit());
        assertEquals("17,13\u202Fin", german.in("mm").text(435, 0));
        assertEquals("rpm", IMPERIAL.in("rpm").unit());
    }

    /** What is shown in imperial measures, turned back, is the metric number shown, within a step of its last decimal. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void turningBackGivesTheMetricNumber(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            String unit = List.of("mm", "m", "km", "km/h", "g", "kg", "N").get(random.nextInt(7));
            int decimals = random.nextInt(4);
            double value = (random.nextDouble() - 0.2) * Math.pow(10, random.nextInt(5));
            Measured measured = IMPERIAL.in(unit);
            String said = "seed " + seed + ": " + value + " " + unit + ", " + decimals + " decimals";

            String shown = measured.number(value, decimals);
            double step = Math.pow(10, -decimals);
            double back =
                    Conversion.between(measured.unit(), unit).orElseThrow().of(parsed(shown));
            double metric = parsed(METRIC.number(value, decimals));
            assertTrue(Math.abs(back - metric) <= step * (1 + 1e-9), said);

            double shownStep = Conversion.between(measured.unit(), unit)
                    .orElseThrow()
                    .of(Math.pow(10, -(shown.contains(".") ? shown.length() - shown.indexOf('.') - 1 : 0)));
            assertTrue(shownStep <= step * (1 + 1e-9) || decimals == 0 && !shown.contains("."), said + " is coarser");
            assertTrue(shownStep > step / 10 * (1 - 1e-9), said + " is more than a digit finer");

            double own = Math.pow(10, -Reader.decimals(metric));
            double kept =
                    Conversion.between(measured.unit(), unit).orElseThrow().of(parsed(measured.exact(metric)));
            assertEquals(metric, Math.rint(kept / own) * own, own * 1e-3, said + " as a recorded number");
        }
    }

    private static double parsed(String text) {
        return Double.parseDouble(text.replace("\u2009", "").replace('\u2212', '-'));
    }
}
