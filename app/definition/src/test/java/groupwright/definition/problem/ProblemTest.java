package groupwright.definition.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProblemTest {
    @ParameterizedTest
    @CsvSource(nullValues = "none", textBlock = """
            a.json, 12, 5, R-001, target, write 50, 'a.json:12:5: R-001, target: "x" is no number; write 50.'
            a.json, 12, 0, R-001, target, write 50, 'a.json:12: R-001, target: "x" is no number; write 50.'
            a.json, 0,  0, R-001, '',     write 50, 'a.json: R-001: "x" is no number; write 50.'
            a.json, 0,  0, '',    target, write 50, 'a.json: target: "x" is no number; write 50.'
            a.json, 3,  1, '',    '',     '',       'a.json:3:1: "x" is no number.'
            '',     3,  1, R-001, '',     '',       'R-001: "x" is no number.'
            '',     0,  0, '',    '',     '',       '"x" is no number.'
            """)
    void theSentenceLeavesOutWhatIsUnknown(
            String file, int line, int column, String record, String field, String remedy, String expected) {
        Problem problem = new Problem(file, line, column, record, field, "\"x\" is no number", remedy);
        assertEquals(expected, problem.sentence());
    }

    @Test
    void aFileNameCannotBreakTheLine() {
        assertEquals(
                "a\uFFFDb\uFFFD[31m: is no record.",
                Problem.ofFile("a\nb\u001b[31m", "is no record", "").sentence());
    }

    @Test
    void aProblemSaysWhatIsWrong() {
        assertThrows(IllegalArgumentException.class, () -> Problem.ofFile("a.json", " ", "do something"));
        assertThrows(IllegalArgumentException.class, () -> new Problem("a.json", -1, 0, "", "", "bad", ""));
    }
}
