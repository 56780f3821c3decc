package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Range of the small project's lead concept: 45 / 10 teeth on one ring, 450 % exactly. */
class CheckCommandTest {
    private static final String RANGE = "requirements/R-001.json";
    private static final String CLAIM = "claims/K-001.json";

    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void copy() {
        project = SmallProject.below(folder);
    }

    @Test
    void wholeText() {
        assertEquals(
                """
                Small: C-001 Eleven cogs leads
                requirement  verdict    value  target            margin  in %  worst  rung
                R-001 Range  meets    450.0 %  at least 440 %  +10.00 %  +2.3         calculated

                The other concepts
                C-002 Twelve cogs: meets 1

                Coverage                     stated  measurable  calculated  tested
                all requirements                  3           2           1       0
                G-001 Riders                      3           2           1       0
                G-002 Riders without climbs       3           2           1       0

                Needs no requirement answers (1)
                N-002 "Nobody listens."

                Requirements that answer no need (1)
                R-003 Wish

                Claims (1)
                K-001 proposed: 450.0 % of range
                """, project.run("check", "small").out().replace('\u202F', ' ').replaceAll("(?s)\n\nAdvice.*", "\n"));
    }

    @Test
    void meetsIsFine() {
        assertEquals(0, project.run("check", "small").exit());
        assertEquals(0, project.run("check", "small", "--strict").exit());
    }

    @Test
    void agreedMissOfTheLeadFails() {
        project.with(RANGE, "440", "460");
        Run run = project.run("check", "small", "--json");
        assertEquals(1, run.exit());
        assertTrue(run.out().contains("\"margin\": -10,"), run.out());
        assertTrue(run.out().contains("\"margin_pct\": -2.1739130434782608,"), run.out());
    }

    @Test
    void missOfADraftOrOfAnotherConceptIsNoFailure() {
        assertEquals(0, project.run("check", "small").exit()); // the draft R-002 asks for 480 %
        project.with("concepts/C-002.json", "44", "39").with("concepts/C-002.json", "50", "43");
        Run run = project.run("check", "small");
        assertTrue(run.out().contains("C-002 Twelve cogs: misses 1 (R-001)"), run.out());
        assertEquals(0, run.exit());
    }

    @Test
    void missingInputFailsOnlyWhenStrict() {
        project.with(RANGE, "\"gear-range\"", "\"climb-cadence\", \"parameters\": {\"climb\": \"none\"}");
        assertEquals(0, project.run("check", "small").exit());
        Run strict = project.run("check", "small", "--strict");
        assertEquals(1, strict.exit());
        assertTrue(strict.out().contains("missing input"), strict.out());
    }

    @Test
    void tooCloseToCallFailsOnlyWhenStrict() {
        project.with(
                RANGE,
                "\"gear-range\",\n      \"comparator\": \"at-least\",\n      \"target\": 440,\n      \"unit\": \"%\"",
                "\"climb-cadence\", \"parameters\": {\"climb\": \"steep-12\"}, \"comparator\": \"at-least\","
                        + " \"target\": 50.9, \"unit\": \"rpm\"");
        project.with(RANGE, "\"state\"", "\"riders\": [\"G-001\"], \"state\"");
        Run run = project.run("check", "small");
        assertTrue(run.out().contains(", too close to call"), run.out());
        assertTrue(run.out().contains("G-001 Riders"), run.out());
        assertEquals(0, run.exit());
        assertEquals(1, project.run("check", "small", "--strict").exit());
    }

    @Test
    void withoutLeadOnlyStrictFails() {
        project.with("project.json", ",\n  \"leadConcept\": \"C-001\"", "");
        Run run = project.run("check", "small");
        assertTrue(run.out().startsWith("Small: no concept leads; name one as leadConcept in project.json\n"));
        assertEquals(0, run.exit());
        assertEquals(1, project.run("check", "small", "--strict").exit());
    }

    @Test
    void approvedClaimThatChangedFails() {
        approve("450");
        assertEquals(
                0,
                project.run("check", "small").exit(),
                project.run("check", "small").out());
        project.with(CLAIM, "\"450\"", "\"460\"");
        Run run = project.run("check", "small");
        assertTrue(run.out().contains("K-001 changed since approval"), run.out());
        assertEquals(1, run.exit());
    }

    private void approve(String value) {
        project.with(CLAIM, "\"proposed\"", """
                "approved",
                "approvals": [{"id": "a1", "by": "marketing", "date": "2026-03-05",
                  "wording": "{{gear-range lead}} of range",
                  "answers": [{"id": "v1", "figure": "gear-range C-001", "value": "%s", "unit": "%%",
                    "formulaVersion": 1, "inputs": []}]}]""".formatted(value));
    }

    @Test
    void adviceNeverFails() {
        Run run = project.run("check", "small", "--strict");
        assertTrue(run.out().contains("R-003 Wish ("), run.out());
        assertEquals(0, run.exit());
    }
}
