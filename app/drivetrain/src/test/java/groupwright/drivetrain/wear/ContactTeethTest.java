package groupwright.drivetrain.wear;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContactTeethTest {
    @ParameterizedTest(name = "{0} teeth, {1} degrees")
    @CsvSource({"40, 180, 20", "12, 90, 3", "11, 360, 11", "32, 0, 0", "10, 171, 4.75"}) // shares of a circle
    void wrapTimesTeeth(int teeth, double wrapDeg, double expected) {
        assertEquals(expected, ContactTeeth.of(teeth, wrapDeg), 1e-12);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ContactTeeth.of(2, 90));
        assertThrows(IllegalArgumentException.class, () -> ContactTeeth.of(12, -1));
        assertThrows(IllegalArgumentException.class, () -> ContactTeeth.of(12, 361));
        assertThrows(IllegalArgumentException.class, () -> ContactTeeth.of(12, Double.NaN));
    }
}
