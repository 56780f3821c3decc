package groupwright.drivetrain.derailleur;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChainClosureTest {
    /** The expected numbers were printed by three independent programs with three decimals, wraps with one. */
    private static final double DIGITS = 0.002;

    private static final double WRAP_DIGITS = 0.05 + 1e-9;

    @ParameterizedTest(name = "{0} links on cog {1}")
    @CsvSource(textBlock = """
            # links, cog, cage angle, gap, wraps on cog, ring, tension and guide pulley
            116, 10, -137.585, 13.685,  96.2, 176.8, 176.1, 89.2
            116, 24,  -94.614, 22.896, 113.9, 164.3, 142.0, 60.2
            116, 50,  -29.112, 11.766, 156.2, 153.4,  80.4, 30.0
            """)
    void anglesGapsAndWraps(
            int links,
            int cog,
            double deg,
            double gapMm,
            double onCog,
            double onRing,
            double onTension,
            double onGuide) {
        CagePosition at = closed(links, cog);
        assertEquals(deg, at.cageAngleDeg(), DIGITS);
        assertEquals(gapMm, at.gap().pitchCirclesMm(), DIGITS);
        assertEquals(onCog, at.wrapsDeg().cog(), WRAP_DIGITS);
        assertEquals(onRing, at.wrapsDeg().ring(), WRAP_DIGITS);
        assertEquals(onTension, at.wrapsDeg().tension(), WRAP_DIGITS);
        assertEquals(onGuide, at.wrapsDeg().guide(), WRAP_DIGITS);
        assertEquals(links, at.lengthPitches(), 1e-9);
    }

    @ParameterizedTest(name = "{0} links on cog {1}")
    @CsvSource({"114, 10, -117.801, 26.715", "114, 24, -81.323, 30.691", "114, 50, -15.775, 14.319"})
    void aShorterChainPullsTheCageForward(int links, int cog, double deg, double gapMm) {
        CagePosition at = closed(links, cog);
        assertEquals(deg, at.cageAngleDeg(), DIGITS);
        assertEquals(gapMm, at.gap().pitchCirclesMm(), DIGITS);
    }

    private static CagePosition closed(int links, int cog) {
        Closure closure = ChainClosure.solve(ExampleMechanism.mechanism(), ExampleMechanism.run(cog), links);
        return assertInstanceOf(Closure.Closes.class, closure).at();
    }
}
