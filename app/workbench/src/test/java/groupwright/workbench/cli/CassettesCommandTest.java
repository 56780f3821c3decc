package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CassettesCommandTest {
    private static final String SMALL = "--smallest 12 --largest 20 --cogs 3 --largest-step 34";

    private static Run cassettes(String line) {
        return Run.in(Path.of(""), ("cassettes " + line).split(" "));
    }

    private static JsonNode json(String line) throws IOException {
        Run run = cassettes(line + " --json");
        assertEquals(0, run.exit(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    /**
     * By hand: of seven middle cogs, 15 and 16 keep the limit, with the same steps, 25 and 33.3 %, in turn; no pair leaves
     * a remainder in the like positions; 15 teeth weigh less. Unevenness: ln steps 0.22314 and 0.28768.
     */
    @Test
    void tableOfASmallQuestion() {
        Run run = cassettes(SMALL + " --ring 30 --cadence 60 --spacing 4");
        assertEquals("""
                cogs      largest step %  unevenness %  mismatch mm  mass g  longest wait s  side travel mm
                12 15 20            33.3          3.23         0.00      57            0.13             8.0

                7  cassettes within ends and count
                5  removed: each must have no step above 34 %
                2  left
                1  beaten by no other of these

                Compared by largest step, unevenness, mismatch, mass. Mass: an estimate of the sprockets alone, plates of 1.8 mm steel of which 40 % are left.
                """, run.out());
        assertEquals(0, run.exit());
        assertEquals("", run.err());
    }

    @Test
    void jsonOfASmallQuestion() {
        assertEquals(
                """
                {
                  "format": 1,
                  "objectives": ["largest-step", "unevenness"],
                  "within": 7,
                  "removed": [
                    {
                      "limit": "largest-step",
                      "demand": "have no step above 34 %",
                      "cassettes": 5
                    }
                  ],
                  "covered": 2,
                  "outOf": 2,
                  "cassettes": [
                    {
                      "cogs": [12, 15, 20],
                      "largestStep_pct": 33.333333333333336,
                      "unevenness_pct": 3.226926056878554,
                      "mismatch_mm": 0,
                      "mass_g": 56.50868485414645,
                      "gearRange_pct": 166.66666666666666
                    },
                    {
                      "cogs": [12, 16, 20],
                      "largestStep_pct": 33.333333333333336,
                      "unevenness_pct": 3.226926056878554,
                      "mismatch_mm": 0,
                      "mass_g": 58.757282816090516,
                      "gearRange_pct": 166.66666666666666
                    }
                  ],
                  "problems": []
                }
                """,
                cassettes(SMALL + " --objectives largest-step,unevenness --json")
                        .out());
    }

    @Test
    void csvNamesUnits() {
        assertEquals("""
                cogs,largest step (%),unevenness (%),mismatch (mm),mass (g),gear range (%)
                12 15 20,33.333333333333336,3.226926056878554,0,56.50868485414645,166.66666666666666
                """, cassettes(SMALL + " --csv").out());
    }

    @Test
    void theSampleQuestionSpeaksForAllCassettes() throws IOException {
        JsonNode answer = json("--smallest 10 --largest 42-48 --cogs 11 --largest-step 20 --show 10");
        assertAll(
                // seven largest cogs, nine inner ones from those between: C(31,9) + … + C(37,9)
                () -> assertEquals(428_381_591, answer.get("within").asLong()),
                () -> assertEquals(3728, answer.get("covered").asLong()),
                () -> assertEquals(252, answer.get("outOf").asLong()),
                () -> assertEquals(10, answer.get("cassettes").size()),
                () -> assertEquals(
                        428_381_591 - 3728, answer.at("/removed/0/cassettes").asLong()),
                () -> assertEquals(5, answer.get("objectives").size()));
    }

    /** The same cogs have the same figures in gears. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "--smallest 10 --largest 24 --cogs 6",
                "--smallest 9-11 --largest 26-30 --cogs 6-7 --largest-step 30 --show 40"
            })
    void numbersAreThoseOfGears(String question) throws IOException {
        for (JsonNode found : json(question).get("cassettes")) {
            String cogs = StreamSupport.stream(found.get("cogs").spliterator(), false)
                    .map(JsonNode::asText)
                    .collect(Collectors.joining(","));
            Run run = Run.in(Path.of(""), "gears", "--rings", "32", "--cogs", cogs, "--roll-out", "2200", "--json");
            JsonNode gears = new ObjectMapper().readTree(run.out());
            double mismatch = 0;
            for (JsonNode one : gears.get("mismatch_mm")) {
                mismatch += one.asDouble();
            }
            assertEquals(gears.get("largestStep_pct"), found.get("largestStep_pct"), cogs);
            assertEquals(gears.get("unevenness_pct"), found.get("unevenness_pct"), cogs);
            assertEquals(mismatch, found.get("mismatch_mm").asDouble(), 1e-9, cogs);
            assertEquals(
                    gears.get("range_pct").asDouble(),
                    found.get("gearRange_pct").asDouble(),
                    1e-9,
                    cogs);
        }
    }

    /** Each limit against a plain count of the 84 cassettes 10 a b c 20 with a, b, c between. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            --largest-step 25           | largest-step
            --largest-step 25,0@13      | largest-step-from-13
            --steps 20,-,18             | steps
            --steps 20,0;-;18.0         | steps
            --largest-jump 3            | largest-jump
            --with 14,16                | with
            --without 13                | without
            --like-positions 2@12       | like-positions
            --jumps-never-shrink        | jumps-never-shrink
            --shape growing --tolerance 2,5 | growing
            --shape 10,15,20 --tolerance 8  | drawn
            --shape constant --tolerance 8  | constant
            --mismatch 0,9@12           | mismatch
            --driver 10                 | all
            """)
    void limitsRemoveWhatTheySay(String limit, String rule) throws IOException {
        long expected = 0;
        for (int a = 11; a < 18; a++) {
            for (int b = a + 1; b < 19; b++) {
                for (int c = b + 1; c < 20; c++) {
                    expected += keeps(rule, List.of(10, a, b, c, 20)) ? 1 : 0;
                }
            }
        }
        JsonNode answer = json("--smallest 10 --largest 20 --cogs 5 " + limit);
        assertEquals(84, answer.get("within").asLong());
        assertEquals(expected, answer.get("covered").asLong());
        assertTrue(rule.equals("all") || expected > 0 && expected < 84, "the rule tells cassettes apart: " + expected);
    }

    private static boolean keeps(String rule, List<Integer> cogs) {
        List<Double> steps = new ArrayList<>();
        List<Integer> jumps = new ArrayList<>();
        for (int i = 1; i < cogs.size(); i++) {
            steps.add(100.0 * (cogs.get(i) - cogs.get(i - 1)) / cogs.get(i - 1));
            jumps.add(cogs.get(i) - cogs.get(i - 1));
        }
        boolean kept = true;
        for (int i = 0; i < steps.size(); i++) {
            double step = steps.get(i);
            double before = i == 0 ? 0 : steps.get(i - 1);
            int from = cogs.get(i);
            kept = kept
                    && switch (rule) {
                        case "largest-step" -> step <= 25;
                        case "largest-step-from-13" -> from < 13 || step <= 25;
                        case "steps" -> !(i == 0 && step > 20 || i == 2 && step > 18);
                        case "largest-jump" -> jumps.get(i) <= 3;
                        case "with" -> cogs.containsAll(List.of(14, 16));
                        case "without" -> !cogs.contains(13);
                        case "like-positions" -> from < 12 || common(from, cogs.get(i + 1)) >= 2;
                        case "jumps-never-shrink" -> i == 0 || jumps.get(i) >= jumps.get(i - 1);
                        case "growing" -> step >= before - 2.5;
                        case "constant" -> Math.abs(step - 100 * (Math.pow(2, 0.25) - 1)) <= 8;
                        case "mismatch" ->
                            from < 12 || 12.7 * (jumps.get(i) - common(from, cogs.get(i + 1))) / (2.0 * from) <= 0.9;
                        case "drawn" ->
                            i > 2 || Math.abs(step - List.of(10, 15, 20).get(i)) <= 8;
                        default -> true;
                    };
        }
        return kept;
    }

    private static int common(int a, int b) {
        return b == 0 ? a : common(b, a % b);
    }

    @ParameterizedTest(name = "--why {0}")
    @CsvSource(delimiter = '|', textBlock = """
            12,15,20 | 12 15 20 is the one that no other beats: largest step 33.3 %, unevenness 3.23 %, mismatch 0.00 mm, mass 57 g.
            12,16,20 | 12 16 20 is beaten by 12 15 20:
            12,17,20 | 12 17 20 breaks a limit: it must have no step above 34 %.
            12,15,21 | 12 15 21 lies outside of what was asked for: 12 to 20 teeth with 3 cogs.
            12,20    | 12 20 lies outside of what was asked for: 12 to 20 teeth with 3 cogs.
            """)
    void aTypedInCassetteIsTold(String cogs, String sentence) {
        assertEquals(
                sentence,
                cassettes(SMALL + " --why " + cogs).out().lines().findFirst().orElseThrow());
    }

    @Test
    void whatBeatsItIsCompared() {
        assertTrue(
                cassettes(SMALL + " --why 12,16,20").out().startsWith("""
                12 16 20 is beaten by 12 15 20:
                                this one  the other  better by
                largest step %      33.3       33.3        0.0
                unevenness %        3.23       3.23       0.00
                mismatch mm         0.00       0.00       0.00
                mass g                59         57          2

                7  cassettes"""),
                cassettes(SMALL + " --why 12,16,20").out());
    }

    /** 12-14-20: steps 16.7 and 42.9 %; 12-16-20: 33.3 and 25 %. */
    @Test
    void neighboursTellWhatAToothCosts() throws IOException {
        JsonNode changes = json(SMALL + " --neighbours 12,15,20").at("/neighbours/changes");
        assertAll(
                () -> assertEquals(2, changes.size()),
                () -> assertEquals(14, changes.at("/0/to").asInt()),
                () -> assertEquals(
                        600 / 14.0 - 100 / 3.0,
                        changes.at("/0/change/largestStep_pct").asDouble(),
                        1e-9),
                () -> assertEquals("largest-step", changes.at("/0/limit").asText()),
                () -> assertEquals(16, changes.at("/1/to").asInt()),
                () -> assertTrue(changes.at("/1/limit").isMissingNode()));
    }

    @Test
    void whereNothingIsLeftThatIsFine() {
        Run run = cassettes("--smallest 10 --largest 20 --cogs 5 --largest-step 19 --with 13,14,15");
        assertAll(
                () -> assertEquals(0, run.exit()),
                () -> assertTrue(run.out().startsWith("No cassette keeps all limits.\n"), run.out()),
                () -> assertTrue(run.out().contains("\n 0  left\n"), run.out()));
    }

    @Test
    void withoutGearRangeOnlyEqualEndsAreCompared() throws IOException {
        String line = "--smallest 10 --largest 14-15 --cogs 3 --objectives largest-step";
        assertTrue(cassettes(line).out().contains("beaten by no other of the same ends and count"));
        // 10-12-14 (20 %) would beat every one up to 15
        assertEquals(
                List.of(14, 15),
                StreamSupport.stream(json(line).get("cassettes").spliterator(), false)
                        .map(one -> one.at("/cogs/2").asInt())
                        .toList());
    }

    @Test
    void aCancelledSearchEndsWithItsCode() {
        Thread.currentThread().interrupt();
        Run run = cassettes("--smallest 9-12 --largest 32-52 --cogs 9-13");
        assertTrue(Thread.interrupted());
        assertEquals(3, run.exit());
        assertEquals("interrupted before it was done.\n", run.err());
    }

    @ParameterizedTest(name = "cassettes {0}")
    @CsvSource(delimiter = '|', textBlock = """
            --smallest 20 --largest 12 --cogs 3                      | the largest cog, at most 12 teeth, is not above the smallest, at least 20; swap or change the ends.
            --smallest 10 --largest 14 --cogs 6                      | 6 cogs do not fit between 10 and 14 teeth, which leave room for 5; ask for fewer cogs or move the ends.
            --smallest 10 --largest 48-42 --cogs 11                  | --largest: a range from 48 to 42 ends before it begins; write the smaller number first.
            --smallest ten --largest 42 --cogs 11                    | --smallest: "ten" is neither a whole number nor a range; write for example 42 or 42-48.
            --smallest 10 --largest 20 --cogs 4 --with 21            | forced cog 21 lies outside 10 to 20 teeth; move the ends or take it out of the list.
            --smallest 10 --largest 20 --cogs 4 --with 14 --without 14,15 | cog 14 is both forced and forbidden; take it out of one list.
            --smallest 10 --largest 20 --cogs 4 --largest-step 10    | 3 steps of at most 10 % do not lead from 10 to 20 teeth; allow larger steps or more cogs.
            --smallest 10 --largest 20 --cogs 4 --largest-jump 3     | 3 jumps of at most 3 teeth do not lead from 10 to 20; allow larger jumps or more cogs.
            --smallest 10 --largest 20 --cogs 4 --driver 11          | the driver body takes no cog below 11 teeth, but the smallest cog may have at most 10; raise the smallest cog or choose another driver body.
            --smallest 10 --largest 20 --cogs 4 --objectives weight  | --objectives: "weight" is no objective; write one or more of largest-step,unevenness,mismatch,mass,gear-range.
            --smallest 10 --largest 20 --cogs 4 --objectives mas     | --objectives: "mas" is no objective; did you mean mass?
            --smallest 10 --largest 20-22 --cogs 4 --objectives mass | mass alone cannot compare cassettes over a range, for fewer and smaller cogs always weigh less; add gear-range to --objectives, or give one number each for ends and cogs.
            --smallest 10 --largest 20 --cogs 4 --largest-step far   | --largest-step: "far" is no number of 0 or above; write for example 12, 12.5 or 12,5.
            --smallest 10 --largest 20 --cogs 4 --largest-step 0     | --largest-step: the largest step must be a finite number above 0 %, was 0.0.
            --smallest 10 --largest 20 --cogs 4 --largest-step 25@x  | --largest-step: "x" is neither a whole number nor a range; write for example 42 or 42-48.
            --smallest 10 --largest 20 --cogs 4 --largest-jump 3-4   | --largest-jump: "3-4" is a range; write one whole number.
            --smallest 10 --largest 20 --cogs 4 --steps 20,,18       | --steps: "" is no number of 0 or above; write for example 12, 12.5 or 12,5.
            --smallest 10 --largest 20 --cogs 4 --steps 99,99,99,99  | 4 steps are given one by one, but a cassette of 4 cogs has 3; shorten the list or allow more cogs.
            --smallest 10 --largest 20 --cogs 4 --shape growing      | --shape is given without a tolerance; add for example --tolerance 2.
            --smallest 10 --largest 20 --cogs 4 --tolerance 2        | --tolerance is given without a shape; add --shape growing, or leave it out.
            --smallest 10 --largest 20 --cogs 4 --shape round --tolerance 2 | --shape: "round" is no shape; write constant, growing, or target steps such as 20,18,18.
            --smallest 10 --largest 20 --cogs 4 --shape 20,- --tolerance 2  | --shape: a drawn shape has a target at each position; write a number for each hyphen.
            --smallest 10 --largest 20 --cogs 4 --show 5             | --show: the number of cassettes to show must lie between 10 and 100000, was 5.
            --smallest 10 --largest 20 --cogs 4 --cadence 70         | --cadence is for --ring; add for example --ring 32.
            --smallest 10 --largest 20 --cogs 4 --ring 2             | --ring: the number of teeth of a chainring must lie between 5 and 120, was 2.
            --smallest 10 --largest 20 --cogs 4 --why 10,9           | --why: the cogs of a cassette must ascend from the smallest, but 10 is followed by 9.
            --smallest 10 --largest 20 --cogs 4 --concept C-001      | --concept is for --for; add --for PROJECT.
            --smallest 10 --largest 20 --cogs 4 --csv --json=false --why 10,20 | --csv holds the cassettes found; leave out --why and --neighbours, or take --json.
            --smallest 10 --largest 20 --cogs 4 --for nowhere        | nowhere: does not exist; look at the name or start one with groupwright new FOLDER.
            """)
    void badInputIsOneSentence(String line, String sentence) {
        Run run = cassettes(line);
        assertAll(
                () -> assertEquals(sentence + "\n", run.err()),
                () -> assertEquals(2, run.exit()),
                () -> assertEquals("", run.out()));
    }

    @Test
    void badInputAsJsonIsAProblem() {
        Run run = cassettes("--smallest 20 --largest 12 --cogs 3 --json");
        assertEquals(2, run.exit());
        Schemas.PROBLEMS.accepts(run.out());
    }
}
