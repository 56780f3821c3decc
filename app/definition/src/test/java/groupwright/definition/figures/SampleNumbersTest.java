package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures of three invented concepts against numbers that an independent script computed from the same inputs. */
class SampleNumbersTest {
    private static final Asking SAMPLE = SampleProject.asking();

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        # Source: recomputed by an independent script; invented data. Tolerance: half of the last digit it printed.
        climb-cadence G-002 climb=steep-12 | 57.1  | 50.7  | 53.0  | 0.05
        climb-cadence G-001 climb=steep-15 | 78.7  | 69.9  | 73.1  | 0.05
        climb-cadence G-003 climb=long-8   | 56.2  | 50.0  | 52.2  | 0.05
        spin-out-speed G-001               | 43.1  | 42.2  | 44.8  | 0.05
        spin-out-speed G-001 cadence=95    | 43.1  | 42.2  | 44.8  | 0.05
        largest-step from-teeth=14         | 18.8  | 20.0  | 18.8  | 0.0501
        phase-mismatch from-teeth=16       | 0.79  | 0.91  | 0.79  | 0.005
        gear-range                         | 518   | 450   | 500   | 0.5
        total-capacity                     | 39    | 35    | 40    | 0
        mass-basic                         | 2131  | 1757  | 1818  | 0.5
        mass-predicted                     | 2192  | 1829  | 1893  | 0.5
        unit-cost                          | 141.96| 136.12| 140.81| 0.005
        """)
    void agreesWithTheScript(String ask, double first, double second, double third, double tolerance) {
        assertEquals(first, SAMPLE.value(ask + " C-001"), tolerance, "C-001");
        assertEquals(second, SAMPLE.value(ask + " C-002"), tolerance, "C-002");
        assertEquals(third, SAMPLE.value(ask + " C-003"), tolerance, "C-003");
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(textBlock = """
        # Source: as above
        side-travel,     C-002, 42.3,  0.005
        side-travel,     C-003, 42.6,  0.005
        capacity-margin, C-002, 1,     0
        capacity-margin, C-001, -5,    0
        """)
    void agreesWithTheScriptForOne(String figure, String concept, double expected, double tolerance) {
        assertEquals(expected, SAMPLE.value(figure + " " + concept), tolerance);
    }

    @ParameterizedTest(name = "from {0} teeth")
    @CsvSource(textBlock = """
        # Source: as above; 32 ring at 70 rpm
        21-25, 21, 0.5625
        """)
    void theLongestWaitOfConceptTwoLiesAtOnePair(String pair, int fromTeeth, double seconds) {
        var wait = SAMPLE.quantity("longest-wait C-002 from-teeth=" + fromTeeth);
        assertEquals(seconds, wait.value(), 1e-12);
        assertEquals(pair, wait.remark());
    }
}
