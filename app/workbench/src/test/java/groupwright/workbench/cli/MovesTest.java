package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What {@code explain --moves} says. */
class MovesTest {
    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void copy() {
        project = SmallProject.below(folder);
    }

    /** Range is 100 · 45/10: with 46 it is 460, with 11 it is 100 · 45/11 = 409.1; the ring and the other cogs cancel. */
    @Test
    void bothEndsOfTheCogsMoveTheRange() {
        assertEquals(
                """
                gear-range C-001 = 450.0\u202F%
                each number behind it changed alone by 1 %, counts by 1; what moves it most comes first

                input       from → to  answer           difference
                C-001.cogs  10 → 11    450.00 → 409.09      −40.91
                C-001.cogs  45 → 46    450.00 → 460.00      +10.00

                not moved by 10 other numbers
                """,
                project.run("explain", "small", "gear-range lead", "--moves").out());
    }

    @Test
    void machinesGetTheSameRanked() throws IOException {
        JsonNode answer = new ObjectMapper()
                .readTree(project.run("explain", "small", "gear-range lead", "--moves", "--change", "5", "--json")
                        .out());
        assertEquals(5, answer.get("change_pct").asDouble());
        assertEquals("cogs", answer.at("/moves/0/field").asText());
        assertEquals(10, answer.at("/moves/0/from").asDouble());
        assertEquals(4500.0 / 11, answer.at("/moves/0/after").asDouble(), 1e-9);
        assertEquals(10, answer.at("/moves/1/difference").asDouble(), 1e-9);
        assertEquals(10, answer.get("unmoved").asInt());
    }

    /** 5 % more power lifts the cadence on a climb by a little less, for the air takes more too. */
    @Test
    void theStatedChangeIsTaken() throws IOException {
        JsonNode answer = new ObjectMapper()
                .readTree(project.run(
                                "explain",
                                "small",
                                "climb-speed lead G-001 climb=steep-12",
                                "--moves",
                                "--change",
                                "5",
                                "--json")
                        .out());
        for (JsonNode move : answer.get("moves")) {
            if (move.get("field").asText().equals("climbs.steep-12.power_W")) {
                assertEquals(199.5, move.get("to").asDouble(), 1e-9);
                double gain = move.get("after").asDouble() / move.get("before").asDouble();
                assertTrue(gain > 1.045 && gain < 1.05, "gain " + gain);
                return;
            }
        }
        throw new AssertionError(answer.toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            steps lead                        | steps C-001 is no single number; ask what moves a figure that gives one.
            lowest-development lead G-002     | lowest-development C-001 G-002 has no answer; G-002.beadSeat_mm: write the bead seat diameter in mm, for example 622, or fill in rollOut_mm.
            """)
    void whatIsNoNumberIsRefused(String figure, String sentence) {
        Run run = project.run("explain", "small", figure, "--moves");
        assertEquals(sentence + "\n", run.err());
        assertEquals(2, run.exit());
    }
}
