package groupwright.drivetrain.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChainLoadTest {
    @Test
    void publishedSafetyFactor() {
        // Bhandari, Design of Machine Elements, Example 14.1
        double tension = ChainLoad.tensionOfPowerN(14_320, ChainLoad.speedMps(19.05, 17, 1000));
        assertEquals(11.722224, ChainLoad.safetyFactor(31_100, tension), 1e-6);
    }

    @Test
    void tensileMinimumsAreThePoundsOfTheRule() {
        // 16 CFR 1512.8: 1800 and 1400 pounds-force, rounded to 10 N there; 4.4482216 N/lbf by definition
        assertEquals(1800 * 4.4482216152605, ChainLoad.LEAST_TENSILE_US_N, 5);
        assertEquals(1400 * 4.4482216152605, ChainLoad.LEAST_TENSILE_US_SIDEWALK_N, 5);
    }

    @Test
    void tensionOfTorqueOnAHexagon() {
        // six teeth: the pitch radius is the pitch (exact sine of 30 degrees)
        assertEquals(100 / 0.0127, ChainLoad.tensionOfTorqueN(100, 12.7, 6), 1e-6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void torqueAndPowerAgreeUpToThePolygon(long seed) {
        var random = new Random(seed);
        int teeth = 22 + random.nextInt(40);
        double rpm = Seeds.between(random, 40, 120);
        double torque = Seeds.between(random, 1, 200);
        double power = torque * rpm * 2 * Math.PI / 60;
        double ofTorque = ChainLoad.tensionOfTorqueN(torque, 12.7, teeth);
        double ofPower = ChainLoad.tensionOfPowerN(power, ChainLoad.speedMps(12.7, teeth, rpm));
        // the pitch circle is longer than the polygon of pitches by x / sin x, x = pi / z
        double half = Math.PI / teeth;
        assertEquals(half / Math.sin(half), ofPower / ofTorque, 1e-9);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> ChainLoad.tensionOfPowerN(100, 0));
        assertThrows(IllegalArgumentException.class, () -> ChainLoad.tensionOfPowerN(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> ChainLoad.tensionOfTorqueN(Double.NaN, 12.7, 32));
        assertThrows(IllegalArgumentException.class, () -> ChainLoad.safetyFactor(8010, 0));
        assertThrows(IllegalArgumentException.class, () -> ChainLoad.speedMps(12.7, 32, -1));
    }
}
