package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.content.Unanswered;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Blocks of brief, concepts and coverage on the sample. */
class DecidingBlocksTest {
    private final ProjectContent content = SampleProject.content(SampleProject.DEFINITION);

    private List<List<String>> rows(String block, String arguments) {
        return SampleProject.rows(content.block(block, arguments));
    }

    @Test
    void scoresEndInTheMeanThatTheDecisionStates() {
        List<List<String>> rows = rows("scores", "D-001");
        assertEquals(List.of("Weighed mean", "", "5", "7.2", "6.75"), rows.get(rows.size() - 1));
        assertEquals(List.of("Weight", "20", "2", "8", "6"), rows.get(2));
    }

    @Test
    void theBriefSaysWhyTheLeadWasChosenAndByWhom() {
        List<String> why = SampleProject.items(content.block("why-chosen", "lead"));
        assertEquals(1, why.size());
        assertTrue(why.get(0).startsWith("D-001, product manager, 2 March 2026: C-002 scores 7.2"), why.get(0));
        assertEquals(List.of(), SampleProject.items(content.block("why-chosen", "C-003")));
    }

    @Test
    void yardsticksStandBesideTheLeadWithHowTheyAreKnown() {
        List<String> mass = rows("yardsticks", "lead").stream()
                .filter(row -> row.get(0).equals("Weight, basic"))
                .findFirst()
                .orElseThrow();
        assertEquals("1757\u202Fg", mass.get(1));
        assertEquals("2214\u202Fg, measured", mass.get(2));
    }

    @Test
    void aTestedValueStandsBesideTheYardsticksToo() {
        List<String> lever = rows("yardsticks", "lead").stream()
                .filter(row -> row.get(0).contains("lever-force"))
                .findFirst()
                .orElseThrow();
        assertEquals("24\u202FN", lever.get(1), "the result of R-015");
    }

    @Test
    void claimsShowLiveNumbersInTheirBasisAndWhatPeopleNoted() {
        String holding = rows("claims-that-hold", "").toString();
        assertFalse(holding.contains("{{"), holding);
        List<String> proposed = rows("claims-not-to-use", "").stream()
                .filter(row -> row.get(0).equals("K-001"))
                .findFirst()
                .orElseThrow();
        assertEquals("R-007 misses; wait for the cassette", proposed.get(2));
    }

    @Test
    void eachGroupSpeaksInItsOwnWordsMustsFirst() {
        List<String> voices = SampleProject.items(content.block("voices", "most=2"));
        assertEquals(3, voices.size());
        assertTrue(
                voices.get(2).startsWith("Loaded bikepacker: “With the bags on, the lowest gear is a lie.” (N-004)"));
        for (String voice : voices) {
            assertEquals(2, voice.split("\\(N-", -1).length - 1, voice);
        }
    }

    @Test
    void weightyRequirementsAloneAreShownWhereAsked() {
        List<String> ids = rows("verdicts", "least-weight=8").stream()
                .map(row -> row.get(0))
                .toList();
        assertTrue(ids.contains("R-005") && !ids.contains("R-007"), "R-007 has weight 7: " + ids);
        assertEquals(
                new Unanswered("least-weight is \"much\"; write a number from 0"),
                content.block("verdicts", "least-weight=much"));
    }

    @Test
    void whatIsOpenCanBeShortAndThenSaysHowMuchMoreThereIs() {
        List<String> all = SampleProject.items(content.block("open", "least-weight=8"));
        List<String> few = SampleProject.items(content.block("open", "least-weight=8 most=2"));
        assertEquals(3, few.size());
        assertEquals((all.size() - 2) + " more; the specification lists all.", few.get(2));
        assertTrue(few.get(0).startsWith("R-017 "), "of weight 10: " + few.get(0));
        assertTrue(all.get(0).startsWith("R-001 "), "in the order of ids: " + all.get(0));
    }

    @Test
    void everyNeedIsInTheCoverageAndThoseWithoutRequirementSaySo() {
        List<List<String>> rows = rows("need-coverage", "");
        Assessment assessment = new Assessment(new Ledger(Catalogue.ofServices(), SampleProject.DEFINITION, 1000));
        List<String> unanswered = assessment.unansweredNeeds().stream()
                .map(need -> need.id().text())
                .toList();
        assertEquals(
                SampleProject.DEFINITION.all(RecordKinds.NEED).stream()
                        .filter(Need::isCurrent)
                        .map(need -> need.id().text())
                        .toList(),
                rows.stream().map(row -> row.get(0)).distinct().toList());
        assertEquals(
                unanswered,
                rows.stream()
                        .filter(row -> row.get(3).equals("no requirement"))
                        .map(row -> row.get(0))
                        .toList());
        assertTrue(rows.stream()
                .anyMatch(row -> row.get(0).equals("N-004")
                        && row.get(3).startsWith("R-003 ")
                        && row.get(4).equals("measurable")
                        && row.get(5).equals("MISSES")));
    }

    @Test
    void aGroupSeesItsOwnVerdict() {
        // R-003 is about the bikepacker (G-003) alone
        assertTrue(rows("need-coverage", "G-003").stream()
                .anyMatch(row -> row.get(3).startsWith("R-003 ") && row.get(5).equals("MISSES")));
        assertTrue(rows("need-coverage", "G-001").stream()
                .noneMatch(row -> row.get(3).startsWith("R-003 ")));
        assertEquals(
                new Unanswered("there is no rider group G-009; name one of the project"),
                content.block("need-coverage", "G-009"));
    }

    @Test
    void verdictsOfEachConceptAddUpToTheAgreedRequirements() {
        List<List<String>> counts = rows("verdict-counts", "");
        int agreed = rows("verdict-grid", "").size();
        for (int concept = 1; concept <= 3; concept++) {
            int column = concept;
            assertEquals(
                    agreed,
                    counts.stream()
                            .mapToInt(row -> Integer.parseInt(row.get(column)))
                            .sum());
        }
    }

    @Test
    void gapsNameWhatIsLacking() {
        List<String> noNumber = rows("gaps", "").stream()
                .filter(row -> row.get(0).equals("R-019"))
                .findFirst()
                .orElseThrow();
        assertTrue(noNumber.get(2).contains("a criterion"), noNumber.get(2));
        assertTrue(rows("gaps", "").stream().noneMatch(row -> row.get(0).equals("R-007")));
        assertTrue(
                rows("statement-advice", "").stream().anyMatch(row -> row.get(0).equals("R-020")));
    }
}
