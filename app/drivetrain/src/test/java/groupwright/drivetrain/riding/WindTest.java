package groupwright.drivetrain.riding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindTest {
    @ParameterizedTest(name = "riding {0} degrees, wind from {1}")
    @CsvSource(textBlock = """
            # elementary: straight on, from behind, from the side, at 60 degrees
            0, 0, 10
            90, 90, 10
            90, 270, -10
            0, 90, 0
            350, 50, 5
            """)
    void theWindComesFromItsBearing(double heading, double from, double headwind) {
        assertEquals(headwind, new Wind(10, from).headwindMps(heading), 1e-9);
    }

    @Test
    void yawOfACrosswindAtItsOwnSpeedIs45Degrees() {
        assertEquals(45, new Wind(8, 90).yawDeg(180, 8), 1e-9);
        assertEquals(0, new Wind(0, 0).yawDeg(123, 0));
    }
}
