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
        # lowest gear on the bike whose cassette lies at 46.5 mm, chainstay 435 mm: atan(25.65 / 435) = 3.37°; front
        # line ± 0.8 mm is ± 0.11°; on 56 mm with twelve cogs of 3.6 mm it is atan(29.3 / 435) = 3.85°
        verdict C-001 R-008 | missing input
        verdict C-002 R-008 | meets
        verdict C-003 R-008 | misses
        verdict C-002 R-012 | missing input
        verdict C-002 R-019 | missing input
        """)
    void saysWhatIsTooCloseToCall(String ask, String words) {
        assertEquals(words, SAMPLE.verdict(ask).words());
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
