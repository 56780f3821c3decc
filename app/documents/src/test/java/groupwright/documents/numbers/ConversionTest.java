package groupwright.documents.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConversionTest {
    /** The expected values are exact or carry seven digits, as the source prints them. */
    private static final double PRINTED = 1e-6;

    private static double convert(double value, String from, String to) {
        return Conversion.between(from, to).orElseThrow().of(value);
    }

    @ParameterizedTest(name = "1 {0} is {2} {1}")
    @CsvSource(textBlock = """
                    # Source: NIST SP 811 (2008), appendix B.8; exact there: in, ft, mi, ft to m, km/h by definition
                    in,   mm,  25.4
                    in,   cm,  2.54
                    ft,   m,   0.3048
                    ft,   in,  12
                    mi,   km,  1.609344
                    lb,   kg,  0.4535924
                    oz,   g,   28.34952
                    mph,  m/s, 0.44704
                    mph,  km/h, 1.609344
                    km/h, m/s, 0.2777778
                    lbf,  N,   4.448222
                    min,  s,   60
                    h,    s,   3600
                    kg,   g,   1000
                    km,   m,   1000
                    """)
    void factorsAreThosePublished(String from, String to, double factor) {
        assertEquals(factor, convert(1, from, to), factor * PRINTED);
    }

    /** International yard and pound agreement, 1959: both are exact, so the digits are too. */
    @Test
    void inchAndPoundAreExact() {
        assertEquals(25.4, convert(1, "in", "mm"));
        assertEquals(1, convert(25.4, "mm", "in"));
        assertEquals(0.45359237, convert(1, "lb", "kg"));
        assertEquals(453.59237, convert(1, "lb", "g"));
        assertEquals(1, convert(453.59237, "g", "lb"), Math.ulp(1.0));
    }

    @Test
    void onlyWithinADimension() {
        assertEquals(Optional.empty(), Conversion.between("mm", "g"));
        assertEquals(Optional.empty(), Conversion.between("kg", "lbf"));
        assertEquals(Optional.empty(), Conversion.between("rpm", "mm"));
        assertEquals(Optional.empty(), Conversion.between("mm", "furlong"));
        assertEquals(92, convert(92, "rpm", "rpm"), "a unit is itself, known or not");
    }

    @Test
    void everyUnitGoesToEachOfItsDimensionAndBack() {
        long seed = 1959;
        Random random = new Random(seed);
        for (String from : Conversion.units()) {
            assertTrue(Conversion.unitsFor(from).contains(from), from);
            for (String to : Conversion.unitsFor(from)) {
                double value = random.nextDouble() * 1e4;
                assertEquals(value, convert(convert(value, from, to), to, from), value * 1e-14, from + " " + to);
            }
        }
    }

    @Test
    void aUnitThatIsNotKnownCanOnlyBeShownAsItIs() {
        assertEquals(List.of("rpm"), Conversion.unitsFor("rpm"));
        assertEquals(List.of("km/h", "m/s", "mph"), Conversion.unitsFor("km/h"));
    }

    @ParameterizedTest(name = "{0} to {1}: {2}")
    @CsvSource({"m, mm, -3", "mm, m, 3", "mm, in, 2", "g, oz, 2", "km/h, mph, 1", "g, g, 0"})
    void decimalsKeepTheResolution(String from, String to, int further) {
        Conversion conversion = Conversion.between(from, to).orElseThrow();
        assertEquals(further, conversion.furtherDecimals());
        assertTrue(Math.pow(10, -further) <= conversion.of(1) * (1 + 1e-9), "no digit is lost");
    }
}
