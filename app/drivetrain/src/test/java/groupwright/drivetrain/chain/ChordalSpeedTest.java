package groupwright.drivetrain.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChordalSpeedTest {
    @ParameterizedTest(name = "{0} teeth")
    @CsvSource(textBlock = """
            # Regression values, not published: of the mean (formula of Shigley ch. 17, from memory), of the greatest
            11, 4.106, 4.051
            17, 1.712, 1.703
            19, 1.370, 1.364
            25, 0.791, 0.789
            """)
    void bothDefinitionsRegression(int teeth, double ofMean, double ofGreatest) {
        assertEquals(ofMean, ChordalSpeed.swingOfMeanPct(teeth), 0.002);
        assertEquals(ofGreatest, ChordalSpeed.swingOfGreatestPct(teeth), 0.002);
    }

    @ParameterizedTest(name = "{0} teeth")
    @CsvSource({"3", "10", "17", "53"})
    void bothAgreeWithAPinFollowedRound(int teeth) {
        // speed along the span of a chain whose leading pin is at angle a: R w cos a, |a| up to half a pitch
        double greatest = 0;
        double least = Double.MAX_VALUE;
        int samples = 2000;
        for (int i = 0; i <= samples; i++) {
            double speed = Math.cos((2.0 * i / samples - 1) * Math.PI / teeth);
            greatest = Math.max(greatest, speed);
            least = Math.min(least, speed);
        }
        double mean = teeth * 2 * Math.sin(Math.PI / teeth) / (2 * Math.PI); // z pitches a turn
        assertEquals(100 * (greatest - least) / greatest, ChordalSpeed.swingOfGreatestPct(teeth), 1e-9);
        assertEquals(100 * (greatest - least) / mean, ChordalSpeed.swingOfMeanPct(teeth), 1e-9);
    }

    @Test
    void moreTeethRunSmoother() {
        for (int teeth = 4; teeth <= 1000; teeth++) {
            assertTrue(ChordalSpeed.swingOfMeanPct(teeth) < ChordalSpeed.swingOfMeanPct(teeth - 1));
            assertTrue(ChordalSpeed.swingOfGreatestPct(teeth) < ChordalSpeed.swingOfGreatestPct(teeth - 1));
        }
        assertThrows(IllegalArgumentException.class, () -> ChordalSpeed.swingOfMeanPct(2));
        assertThrows(IllegalArgumentException.class, () -> ChordalSpeed.swingOfGreatestPct(0));
    }
}
