package groupwright.drivetrain.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BoundsTest {
    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void noBoundLetsPassWhatIsNotFinite(double value) {
        assertThrows(IllegalArgumentException.class, () -> Bounds.finite("x", value, "m"));
        assertThrows(IllegalArgumentException.class, () -> Bounds.positive("x", value, "m"));
        assertThrows(IllegalArgumentException.class, () -> Bounds.notNegative("x", value, "m"));
        assertThrows(IllegalArgumentException.class, () -> Bounds.within("x", value, 0, 1, "m"));
    }

    @Test
    void zeroIsNotNegativeButNotPositive() {
        assertEquals(0, Bounds.notNegative("the mass", 0, "kg"));
        var error = assertThrows(IllegalArgumentException.class, () -> Bounds.positive("the mass", 0, "kg"));
        assertEquals("the mass must be a finite number above 0 kg, was 0.0", error.getMessage());
    }

    @Test
    void messagesNameQuantityBoundAndNumber() {
        var within = assertThrows(IllegalArgumentException.class, () -> Bounds.within("the share", 2, 0, 1, ""));
        assertEquals("the share must lie between 0.0 and 1.0, was 2.0", within.getMessage());
        var finite = assertThrows(IllegalArgumentException.class, () -> Bounds.finite("the wind", Double.NaN, "m/s"));
        assertEquals("the wind must be a finite number in m/s, was NaN", finite.getMessage());
        var least = assertThrows(IllegalArgumentException.class, () -> Bounds.notNegative("the price", -1, ""));
        assertEquals("the price must be a finite number of 0 or more, was -1.0", least.getMessage());
    }
}
