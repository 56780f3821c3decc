package groupwright.drivetrain.gearing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WheelTest {
    @ParameterizedTest(name = "{0}-{1}")
    @CsvSource(textBlock = """
            # Rule of ISO 5775-1 (summary in an encyclopaedia); numbers recomputed from it, not published
            32, 622, 686, 2155.1
            40, 622, 702, 2205.4
            57, 584, 698, 2192.8
            50, 559, 659, 2070.3
            47, 571, 665, 2089.2
            32, 630, 694, 2180.3
            # narrow tyres, 2.5 mm higher than wide
            23, 622, 673, 2114.3
            25, 622, 677, 2126.9
            # the edge of the rule
            28, 622, 678, 2130.0
            """)
    void markingGivesDiameterAndCircumference(double width, double beadSeat, double diameter, double circumferenceMm) {
        assertEquals(diameter, Wheel.overallDiameterMm(beadSeat, width), 1e-9);
        assertEquals(circumferenceMm / 1000, Wheel.ofMarking(beadSeat, width).circumferenceM(), 0.1 / 1000);
    }

    @Test
    void rollOutIsTakenAsMeasured() {
        assertEquals(2.098, Wheel.ofRollOut(2098).circumferenceM(), 1e-12);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void loadShortensInProportion(long seed) {
        var random = new Random(seed);
        double beadSeat = Seeds.between(random, 300, 650);
        double width = Seeds.between(random, 18, 80);
        double factor = Seeds.between(random, 0.8, 1.1);
        assertEquals(
                factor * Wheel.ofMarking(beadSeat, width).circumferenceM(),
                Wheel.ofMarking(beadSeat, width, factor).circumferenceM(),
                1e-12);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            0, 40, 1, bead seat diameter
            NaN, 40, 1, bead seat diameter
            622, 0, 1, width of a tyre
            622, 622, 1, width of a tyre
            622, 40, 0, loaded factor
            622, 40, NaN, loaded factor
            """)
    void nonsenseIsRefusedByName(double beadSeat, double width, double factor, String named) {
        var error = assertThrows(IllegalArgumentException.class, () -> Wheel.ofMarking(beadSeat, width, factor));
        assertTrue(error.getMessage().contains(named), error.getMessage());
    }

    @Test
    void rollOutInMetresIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Wheel.ofRollOut(2.098));
    }
}
