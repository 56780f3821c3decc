package groupwright.drivetrain.riding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.drivetrain.Seeds;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RoadForcesTest {
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void forcesTimesSpeedAreTheTermsOfThePowerBalance(long seed) {
        var random = new Random(seed);
        var system = PowerBalanceTest.system(random);
        var air = new Air(Seeds.between(random, 0.9, 1.3), Seeds.between(random, -12, 12));
        double grade = Seeds.between(random, -0.3, 0.3);
        double speed = Seeds.between(random, 0.1, 20);
        var forces = RoadForces.of(system, air, grade);
        PowerTerms terms = PowerBalance.terms(system, air, grade, speed);
        assertEquals(terms.aerodynamicW(), speed * forces.airN(speed), 1e-9);
        assertEquals(terms.rollingW(), speed * forces.rollingN(), 1e-9);
        assertEquals(terms.bearingsW(), speed * forces.bearingsN(speed), 1e-9);
        assertEquals(terms.slopeW(), speed * forces.slopeN(), 1e-9);
        assertEquals(terms.wheelW(), speed * forces.totalN(speed), 1e-8);
        double step = 1e-5;
        double growth = (forces.totalN(speed + step) - forces.totalN(speed - step)) / (2 * step);
        assertEquals(growth, forces.growthNsPerM(speed), 1e-4);
    }
}
