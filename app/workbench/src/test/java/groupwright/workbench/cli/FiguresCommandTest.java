package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresCommandTest {
    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void copy() {
        project = SmallProject.below(folder);
    }

    /** The questions, without their answers. */
    private List<String> asked(String... arguments) {
        return project.run(arguments)
                .out()
                .lines()
                .map(line -> line.split(" {2}")[0])
                .toList();
    }

    @Test
    void parkedConceptsOnlyWhenNamed() {
        assertEquals(
                List.of("gear-range C-001", "gear-range C-002"), asked("figures", "small", "--figure", "gear-range"));
        assertEquals(
                List.of("gear-range C-003"), asked("figures", "small", "--figure", "gear-range", "--concept", "C-003"));
        assertEquals(List.of("gear-range C-003"), asked("figures", "small", "--figure", "gear-range C-003"));
        assertEquals(List.of("gear-range C-001"), asked("figures", "small", "--figure", "gear-range lead"));
    }

    @Test
    void retiredRidersOnlyWhenNamed() {
        project.with("riders/G-001.json", "\"title\"", "\"retired\": \"merged\", \"title\"");
        assertFalse(project.run("figures", "small").out().contains("G-001"));
        assertTrue(project.run("figures", "small", "--riders", "G-001").out().contains("G-001"));
    }

    @Test
    void climbsOfTheRidersAreAskedOneByOne() {
        assertEquals(
                List.of("climb-cadence C-001 G-001 climb=steep-12", "climb-cadence C-001 G-001 climb=easy-6"),
                asked("figures", "small", "--concept", "C-001", "--figure", "climb-cadence"));
        assertEquals(
                List.of("climb-cadence C-001 G-001 climb=easy-6"),
                asked("figures", "small", "--figure", "climb-cadence lead G-001 climb=easy-6"));
    }

    @Test
    void whatMustBeToldIsLeftOutUnlessNamed() {
        Run all = project.run("figures", "small");
        assertEquals(0, all.exit());
        assertTrue(all.out().contains("Left out: mass-margin, budget is not given; add budget=…"), all.out());
        Run named = project.run("figures", "small", "--figure", "mass-margin");
        assertEquals(2, named.exit());
        assertTrue(named.err().startsWith("budget: is not given; add budget=…"), named.err());
    }

    /** 45 / 10 teeth on one ring; exact, since only counts go in. */
    @Test
    void jsonOfOneFigure() {
        assertEquals(
                """
                {
                  "format": 1,
                  "figures": [
                    {
                      "figure": "gear-range",
                      "subject": {
                        "concept": "C-001"
                      },
                      "parameters": {},
                      "value": 450,
                      "unit": "%",
                      "band": {
                        "low": 450,
                        "high": 450
                      },
                      "formulaVersion": 1
                    }
                  ],
                  "leftOut": [],
                  "problems": []
                }
                """,
                project.run("figures", "small", "--figure", "gear-range lead", "--json")
                        .out());
    }

    @Test
    void missingInputIsAnObject() {
        String out = project.run("figures", "small", "--figure", "lowest-development lead G-002", "--json")
                .out();
        assertTrue(out.contains("\"missing\": {\n        \"record\": \"G-002\",\n        \"field\": \""), out);
        assertFalse(out.contains("\"value\""), out);
    }

    @Test
    void numbersInParametersAreNumbers() {
        String out = project.run("figures", "small", "--figure", "largest-step lead from-teeth=14", "--json")
                .out();
        assertTrue(out.contains("\"parameters\": {\n        \"from-teeth\": 14\n      }"), out);
    }

    @ParameterizedTest(name = "{0} {1}")
    @CsvSource(delimiter = '|', textBlock = """
            --figure  | gear-rang               | there is no figure "gear-rang"; did you mean gear-range?
            --figure  | gear-range C-009        | there is no concept C-009 in this project; it has C-001, C-002, C-003.
            --figure  | gear-range G-001        | gear-range: is asked about G-001; name one concept (C-…).
            --figure  | gear-range C-001 C-002  | gear-range: two records of one kind, C-001 and C-002; name one; name each kind once.
            --figure  | gear-range C-001 x=1    | x: is no parameter of gear-range; use none; it has no parameters.
            --figure  | gear-range everywhere   | "everywhere" is neither a record nor a parameter; write a record such as C-001 or a parameter such as from-teeth=14.
            --concept | C-009                   | there is no concept C-009 in this project; it has C-001, C-002, C-003.
            --concept | G-001                   | there is no concept G-001 in this project; it has C-001, C-002, C-003.
            --bike    | B-001                   | there is no bike B-001 in this project; it has none; add bikes/B-001.json.
            """)
    void wrongChoiceIsOneSentence(String option, String value, String sentence) {
        Run run = project.run("figures", "small", option, value);
        assertEquals(sentence + "\n", run.err());
        assertEquals(2, run.exit());
    }
}
