package groupwright.drivetrain.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TeethTest {
    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -1, 0, 4, 81, Integer.MAX_VALUE})
    void cogsHaveFiveToEightyTeeth(int teeth) {
        var error = assertThrows(IllegalArgumentException.class, () -> new Cog(teeth));
        assertEquals("the number of teeth of a cog must lie between 5 and 80, was " + teeth, error.getMessage());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 4, 121})
    void ringsHaveFiveToHundredTwentyTeeth(int teeth) {
        var error = assertThrows(IllegalArgumentException.class, () -> new Chainring(teeth));
        assertEquals("the number of teeth of a chainring must lie between 5 and 120, was " + teeth, error.getMessage());
    }

    @Test
    void theBoundsThemselvesAreAllowed() {
        assertEquals(5, new Cog(5).teeth());
        assertEquals(80, new Cog(80).teeth());
        assertEquals(5, new Chainring(5).teeth());
        assertEquals(120, new Chainring(120).teeth());
    }
}
