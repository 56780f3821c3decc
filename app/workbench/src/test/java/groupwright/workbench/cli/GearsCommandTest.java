package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GearsCommandTest {
    private static final Path HERE = Path.of("");

    /** Plain arithmetic: 2.5 m roll-out, one ring of 30; 30/20, 30/15, 30/12; ln steps 0.22314 and 0.28768. */
    @Test
    void jsonOfThreeCogs() {
        assertEquals(
                """
                {
                  "format": 1,
                  "circumference_m": 2.5,
                  "gears": [
                    {
                      "ring": 30,
                      "cog": 20,
                      "ratio": 1.5,
                      "development_m": 3.75
                    },
                    {
                      "ring": 30,
                      "cog": 15,
                      "ratio": 2,
                      "development_m": 5
                    },
                    {
                      "ring": 30,
                      "cog": 12,
                      "ratio": 2.5,
                      "development_m": 6.25
                    }
                  ],
                  "range_pct": 166.66666666666666,
                  "steps_pct": [25, 33.333333333333336],
                  "largestStep_pct": 33.333333333333336,
                  "unevenness_pct": 3.226926056878554,
                  "likePositions": [3, 5],
                  "mismatch_mm": [0, 0],
                  "totalCapacity_teeth": 8
                }
                """, gears("--rings 30 --cogs 12,15,20 --roll-out 2500 --json").out());
    }

    @Test
    void tableOfThreeCogs() {
        assertEquals("""
                ring  cog  ratio  development m
                  30   20  1.500           3.75
                  30   15  2.000           5.00
                  30   12  2.500           6.25

                cogs   step %  like positions  mismatch mm
                12-15    25.0               3         0.00
                15-20    33.3               5         0.00

                range 166.7 %, largest step 33.3 %, unevenness 3.23 %, total capacity 8 teeth, wheel 2.500 m a turn
                """, gears("--rings 30 --cogs 12,15,20 --roll-out 2500").out());
    }

    /** One cog has no steps, so there is no largest one and no unevenness; they are left out rather than null. */
    @Test
    void oneCogHasNoSteps() {
        assertEquals("""
                {
                  "format": 1,
                  "circumference_m": 2.5,
                  "gears": [
                    {
                      "ring": 30,
                      "cog": 15,
                      "ratio": 2,
                      "development_m": 5
                    }
                  ],
                  "range_pct": 100,
                  "steps_pct": [],
                  "likePositions": [],
                  "mismatch_mm": [],
                  "totalCapacity_teeth": 0
                }
                """, gears("--rings 30 --cogs 15 --roll-out 2500 --json").out());
    }

    /** ISO 5775-1 by an encyclopaedia's summary: 32-622 has an overall diameter of 686 mm. */
    @Test
    void wheelByItsMarking() {
        String text = gears("--rings 34 --cogs 34 --bead-seat 622 --tyre 32").out();
        assertEquals(
                "  34   34  1.000           2.16",
                text.lines().skip(1).findFirst().orElseThrow());
    }

    @ParameterizedTest(name = "gears {0}")
    @CsvSource(delimiter = '|', textBlock = """
            --rings 0 --cogs 10 --roll-out 2312        | --rings: the number of teeth of a chainring must lie between 5 and 120, was 0.
            --rings -32 --cogs 10 --roll-out 2312      | --rings: the number of teeth of a chainring must lie between 5 and 120, was -32.
            --rings 32 --cogs 10,0 --roll-out 2312     | --cogs: the number of teeth of a cog must lie between 5 and 80, was 0.
            --rings 32 --cogs 12,10 --roll-out 2312    | --cogs: the cogs of a cassette must ascend from the smallest, but 12 is followed by 10.
            --rings 32 --cogs 12,12 --roll-out 2312    | --cogs: the cogs of a cassette must ascend from the smallest, but 12 is followed by 12.
            --rings 32 --cogs ten,12 --roll-out 2312   | --cogs: "ten" is no count of teeth; write whole numbers parted by commas, for example --cogs 10,12,14.
            --rings 32 --cogs 10,,12 --roll-out 2312   | --cogs: "" is no count of teeth; write whole numbers parted by commas, for example --cogs 10,12,14.
            --rings 32 --cogs 1e1 --roll-out 2312      | --cogs: "1e1" is no count of teeth; write whole numbers parted by commas, for example --cogs 10,12,14.
            --rings 99999999999 --cogs 10 --roll-out 9 | --rings: "99999999999" is no count of teeth; write whole numbers parted by commas, for example --rings 10,12,14.
            --rings 32,32 --cogs 10 --roll-out 2312    | --rings: the rings of a crankset must differ, but two have 32 teeth.
            --rings 32 --cogs 10                       | the wheel is not given; write --bead-seat 622 --tyre 57, or --roll-out 2312.
            --rings 32 --cogs 10 --tyre 57             | the wheel is given by half; write --bead-seat 622 --tyre 57, or --roll-out 2312.
            --rings 32 --cogs 10 --tyre 57 --roll-out 2312 | the wheel is given twice; write --bead-seat 622 --tyre 57, or --roll-out 2312.
            --rings 32 --cogs 10 --roll-out NaN        | --roll-out: "NaN" is no number; write it with a point, for example 57 or 57.5.
            --rings 32 --cogs 10 --roll-out 2,3        | --roll-out: "2,3" is no number; write it with a point, for example 57 or 57.5.
            --rings 32 --cogs 10 --roll-out 0          | --roll-out: the measured roll-out of a wheel must lie between 300.0 and 5000.0 mm, was 0.0.
            """)
    void badInputIsOneSentence(String line, String sentence) {
        Run run = gears(line);
        assertAll(
                () -> assertEquals(sentence + "\n", run.err()),
                () -> assertEquals(2, run.exit()),
                () -> assertEquals("", run.out()));
    }

    private static Run gears(String line) {
        return Run.in(HERE, ("gears " + line).split(" "));
    }
}
