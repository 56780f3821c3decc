package groupwright.definition.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
    @ParameterizedTest(name = "{0} for {1}: {2}")
    @CsvSource(textBlock = """
            # counted by hand
            step,   step,    0
            setp,   step,    1
            stp,    step,    1
            stepp,  step,    1
            stop,   step,    1
            kitten, sitting, 3
            '',     step,    4
            """)
    void mistakesAreCounted(String typed, String meant, int mistakes) {
        assertEquals(mistakes, Nearest.mistakes(typed, meant));
    }

    @Test
    void aNameTooFarAwayIsNotSuggested() {
        List<String> known = List.of("gear-range", "largest-step");
        assertEquals(Optional.of("largest-step"), Nearest.of("largst-setp", known));
        assertEquals(Optional.empty(), Nearest.of("weight", known));
    }
}
