package groupwright.drivetrain.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ChainLinksTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            # Bhandari, Design of Machine Elements, Examples 14.3 and 14.4; Shigley, Example 17-5 (from memory)
            121.875097, 122
            105.683011, 106
            75.79, 76
            # even by definition
            110, 110
            110.0000000001, 110
            110.001, 112
            111, 112
            0.5, 2
            """)
    void roundsUpToEven(double pitches, int links) {
        assertEquals(links, ChainLinks.even(pitches));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -4, Double.NaN, Double.POSITIVE_INFINITY, 1e9})
    void nonsenseIsRefused(double pitches) {
        assertThrows(IllegalArgumentException.class, () -> ChainLinks.even(pitches));
    }
}
