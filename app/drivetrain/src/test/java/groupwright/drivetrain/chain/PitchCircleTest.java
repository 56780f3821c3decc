package groupwright.drivetrain.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PitchCircleTest {
    @ParameterizedTest(name = "{0} mm, {1} teeth: {2} mm")
    @CsvSource(textBlock = """
            # Bhandari, Design of Machine Elements, Example 14.4
            19.05, 17, 103.673741
            19.05, 34, 206.462975
            # exact sines of 30, 18 and 15 degrees: 2, 1 + sqrt 5, sqrt 6 + sqrt 2
            12.7, 6, 25.4
            12.7, 10, 41.0980636
            12.7, 12, 49.0690319
            """)
    void publishedDiameters(double pitch, int teeth, double expected) {
        assertEquals(expected, PitchCircle.diameterMm(pitch, teeth), 1e-6);
    }

    @ParameterizedTest(name = "{0} teeth")
    @CsvSource(textBlock = """
            # Regression values, not published
            11, 45.0782
            17, 69.1158
            25, 101.3299
            34, 137.6420
            50, 202.2598
            52, 210.3398
            """)
    void bicycleRegression(int teeth, double expected) {
        assertEquals(expected, PitchCircle.diameterMm(12.7, teeth), 1e-4);
    }

    @Test
    void aSprocketNeedsAPolygonAndAPitch() {
        assertThrows(IllegalArgumentException.class, () -> PitchCircle.diameterMm(12.7, 2));
        assertThrows(IllegalArgumentException.class, () -> PitchCircle.diameterMm(0, 17));
        assertThrows(IllegalArgumentException.class, () -> PitchCircle.diameterMm(Double.NaN, 17));
    }
}
