package groupwright.drivetrain.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RiderPlanTest {
    @ParameterizedTest(name = "on {0}: {1} W, {2} rpm")
    @CsvSource(textBlock = """
            # power by the shares the usual plan states; cadences 75 to 95: 85 on the flat, 75 from 8 %
            -0.1,  120, 85
            -0.02, 120, 85
            -0.01, 145, 85
            0,     170, 85
            0.03,  190, 81.25
            0.045, 200, 79.375
            0.06,  210, 77.5
            0.2,   210, 75
            """)
    void powerAndCadenceFollowTheGrade(double grade, double watts, double rpm) {
        RiderPlan plan = RiderPlan.usual(200, Rides.HABITS, 50);
        assertEquals(watts, plan.powerW(grade), 1e-9);
        assertEquals(rpm, plan.cadence().targetRpm(grade), 1e-9);
    }

    @Test
    void theTorqueGivesTheLargestPowerAtHalfTheLeastCadence() {
        // 210 W at 30 rpm = pi rad/s
        assertEquals(210 / Math.PI, RiderPlan.usual(200, Rides.HABITS, 50).mostTorqueNm(), 1e-9);
    }

    @Test
    void powersOutOfOrderAreRefused() {
        var wrong = List.of(new GradePower(0.05, 200), new GradePower(0, 100));
        assertThrows(IllegalArgumentException.class, () -> RiderPlan.of(wrong, -0.03, 50, Rides.HABITS));
        assertThrows(IllegalArgumentException.class, () -> RiderPlan.of(List.of(), -0.03, 50, Rides.HABITS));
    }
}
