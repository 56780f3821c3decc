package groupwright.drivetrain.derailleur;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MarchTest {
    private static final int MECHANISMS = 40; // for each of a hundred seeds; half of them closes

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void noClosureIsLostAgainstAMarchOfAHundredthDegree(long seed) {
        var random = new Random(seed);
        for (int i = 0; i < MECHANISMS; i++) {
            Mechanism mechanism = ExampleMechanism.random(random);
            ChainRun run = ExampleMechanism.randomRun(random);
            double links = i % 2 == 0
                    ? ExampleMechanism.randomLinks(run, random)
                    : ExampleMechanism.hardLinks(mechanism, run, random);
            OptionalDouble fine = FineMarch.solve(mechanism, run, links, 0.01);
            Closure closure = ChainClosure.solve(mechanism, run, links);
            String what = mechanism + " " + run + " " + links;
            if (fine.isPresent()) {
                CagePosition at =
                        assertInstanceOf(Closure.Closes.class, closure, what).at();
                assertEquals(fine.getAsDouble(), at.cageAngleDeg(), 1e-7, what);
            } else {
                assertFalse(closure instanceof Closure.Closes, what);
            }
        }
    }
}
