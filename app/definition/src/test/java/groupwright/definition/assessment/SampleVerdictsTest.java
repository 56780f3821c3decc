package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Verdicts on the requirements of the sample project. Its data are invented; the margins were recomputed from them outside
 * this program: power balance solved by bisection with 9.81 m/s², wheel of 736 mm, tooth counts and parts list by hand. A
 * change of the sample changes this table.
 */
class SampleVerdictsTest {
    private static final Scene SAMPLE = Scene.sample();

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # requirement | meets or misses, and margin, of C-001, C-002, C-003 | tolerance: half of the last digit written
        R-001 | meets  7.11  | meets  0.72  | meets  3.04  | 0.005
        R-002 | meets  13.71 | meets  4.90  | meets  8.10  | 0.005
        R-003 | meets  4.24  | misses -2.05 | meets  0.24  | 0.005
        R-004 | meets  0.13  | misses -0.83 | meets  1.81  | 0.005
        R-005 | misses -0.75 | misses -2    | misses -0.75 | 0.000001
        R-006 | meets  0.056 | misses -0.057| meets  0.056 | 0.0005
        R-007 | meets  38.18 | misses -30   | meets  20    | 0.005
        R-009 | misses -361.8| meets  1.3   | misses -63.2 | 0.05
        R-010 | misses -1.17 | meets  4.67  | misses -0.02 | 0.005
        """)
    void agreesWithWhatWasWorkedOutBeside(
            String requirement, String first, String second, String third, double tolerance) {
        assertVerdict(requirement, "C-001", first, tolerance);
        assertVerdict(requirement, "C-002", second, tolerance);
        assertVerdict(requirement, "C-003", third, tolerance);
    }

    private static void assertVerdict(String requirement, String concept, String expected, double tolerance) {
        var verdict = SAMPLE.verdict("verdict " + concept + " " + requirement);
        String[] is = expected.split(" +");
        assertEquals(is[0], verdict.words().replace(", too close to call", ""), concept);
        assertEquals(Double.parseDouble(is[1]), verdict.margin(), tolerance, concept);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # far inside the bands of rolling, air and efficiency, or of weight and cost; counts have none
        verdict C-002 R-001 | meets, too close to call
        verdict C-001 R-001 | meets
        verdict C-002 R-005 | misses
        verdict C-002 R-009 | meets, too close to call
        verdict C-003 R-010 | misses, too close to call
        verdict C-002 R-010 | meets
        verdict C-002 R-011 | meets
        verdict C-002 R-015 | misses
        verdict C-002 R-018 | meets
        # lowest gear on the bike whose cassette lies at 46.5 mm, chainstay 435 mm: atan(25.65 / 433.8) = 3.38°, the free span of 32 and 45 teeth; front
        # line ± 0.8 mm is ± 0.11°; on 56 mm with twelve cogs of 3.6 mm it is atan(29.3 / 433.8) = 3.86°
        verdict C-001 R-008 | missing input
        verdict C-002 R-008 | meets
        verdict C-003 R-008 | misses
        # B-003 and B-006 have no hanger; a path at 38° takes 100 · sin 38° = 61.6 % of a blow
        verdict C-002 R-016 | missing input
        verdict C-002 R-047 | meets
        fits C-002 B-001    | meets
        fits C-002 B-003    | missing input
        fits C-003 B-001    | meets, too close to call
        # 120 links needed, 118 supplied
        fits C-003 B-003    | misses
        verdict C-002 R-012 | missing input
        verdict C-002 R-019 | missing input
        """)
    void saysWhatIsTooCloseToCall(String ask, String words) {
        assertEquals(words, SAMPLE.verdict(ask).words());
    }

    /** Chain angle in the lowest gear, worked out by an independent script; 3 of 4 digits. */
    @ParameterizedTest
    @CsvSource({
        "C-002, 2.95 2.82 2.79 3.38 2.99 3.15",
        "C-003, 3.44 3.30 3.26 3.86 3.48 3.63",
    })
    void chainAnglesOnSixBikesAgree(String concept, String angles) {
        String[] expected = angles.split(" ");
        for (int bike = 1; bike <= 6; bike++) {
            var angle =
                    (groupwright.definition.figure.Quantity) SAMPLE.answer("chain-angle " + concept + " B-00" + bike);
            assertEquals(Double.parseDouble(expected[bike - 1]), angle.value(), 0.006, "B-00" + bike);
        }
    }

    @ParameterizedTest(name = "K-{0} to K-{1}")
    @CsvSource(textBlock = """
        1,  5,  PROPOSED
        6,  10, HOLDS
        11, 15, CHANGED_SINCE_APPROVAL
        16, 20, UNSUPPORTED
        21, 25, WITHDRAWN
        """)
    void fiveClaimsStandInEachState(int first, int last, ClaimState state) {
        for (int i = first; i <= last; i++) {
            assertEquals(state.word(), SAMPLE.claim("K-%03d".formatted(i)).word(), "K-" + i);
        }
    }
}
