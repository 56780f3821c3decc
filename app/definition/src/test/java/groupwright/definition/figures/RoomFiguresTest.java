package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Room on a bike, by subtraction. */
class RoomFiguresTest {
    private static final Asking ASKING = Asking.about(
            Asking.record("C-001", "\"rings\": [34, 22], \"cogs\": [11, 40], \"frontChainLine_mm\": 52"),
            Asking.record("G-001", "\"tyre_mm\": 57"),
            Asking.record("B-001", """
                    "largestRing_teeth": 32, "driverSmallest_teeth": 10, "chainLineLeast_mm": 49, "chainLineMost_mm": 53,
                    "largestTyre_mm": 55.5"""),
            Asking.record("B-002", "\"chainLineLeast_mm\": 53, \"chainLineMost_mm\": 57"));

    @ParameterizedTest
    @CsvSource({
        "ring-room C-001 B-001, -2",
        "driver-room C-001 B-001, 1",
        "chain-line-room C-001 B-001, 1",
        "chain-line-room C-001 B-002, -1",
        "tyre-room G-001 B-001, -1.5",
    })
    void roomIsWhatIsLeft(String ask, double room) {
        assertEquals(room, ASKING.value(ask), 1e-12);
    }

    @Test
    void pulsationFallsWithTeeth() {
        // Shigley's definition (formula cited from memory): 4.106 % at 11 teeth, own arithmetic
        assertEquals(4.106, ASKING.value("small-cog-pulsation C-001"), 0.001);
    }

    @ParameterizedTest
    @CsvSource({
        "ring-room C-001 B-002, B-002.largestRing_teeth",
        "driver-room C-001 B-002, B-002.driverSmallest_teeth",
        "tyre-room G-001 B-002, B-002.largestTyre_mm",
    })
    void anEmptyFieldIsNamed(String ask, String address) {
        assertEquals(address, ASKING.missing(ask).get(0).address().toString());
    }
}
