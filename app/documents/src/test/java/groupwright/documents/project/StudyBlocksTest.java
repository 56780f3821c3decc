package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.documents.content.Unanswered;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The study of the sample's cassette; steps, mismatch and differences by hand. */
class StudyBlocksTest {
    private static final String OWN = "10 12 14 16 18 21 25 30 35 40 45".replace(' ', '\u202F');

    private final ProjectContent content = SampleProject.content(SampleProject.DEFINITION);

    private List<List<String>> rows(String block, String arguments) {
        return SampleProject.rows(content.block(block, arguments));
    }

    @Test
    void theOwnCassetteStandsAmongTheBestWithItsValues() {
        List<List<String>> rows = rows("best-cassettes", "lead");
        List<String> own = rows.stream()
                .filter(row -> row.get(0).equals("C-002"))
                .findFirst()
                .orElseThrow();
        // largest 10 to 12; mismatch 12.7 · (4 - 1) / (2 · 21) = 0.907 of 21 to 25, all other pairs 0
        assertEquals(List.of("C-002", OWN, "20.0", "2.31", "0.91"), own.subList(0, 5));
        assertEquals(12, rows.size());
    }

    @Test
    void aRangeAsksForOtherEnds() {
        String question = SampleProject.words(content.block("cassette-question", "lead largest=44-46 largest-step=20"));
        assertTrue(question.startsWith("Cassettes of 11 cogs from 10 to 44 to 46 teeth"), question);
        assertTrue(question.contains("gear range"), question);
    }

    @Test
    void oneToothIsPricedStepByStep() {
        List<String> row = rows("cassette-neighbours", "lead").stream()
                .filter(cells -> cells.get(0).equals("25 → 24"))
                .findFirst()
                .orElseThrow();
        // 24 to 30 is 25 %, 5 above 20; 21 to 24 divides by 3, so the mismatch of 0.907 goes
        assertEquals("+5.0", row.get(1));
        assertEquals("−0.91", row.get(3));
        assertEquals("breaks: step at most 20.0 %", row.get(5));
    }

    @Test
    void aBeatenCassetteIsToldWhatBeatsIt() {
        Definition worse = SampleProject.DEFINITION.with(
                Address.parse("C-002.cogs").orElseThrow(),
                Optional.of(List.of(10, 12, 14, 17, 18, 21, 25, 30, 35, 40, 45)));
        String standing = SampleProject.words(SampleProject.content(worse).block("cassette-standing", "lead"));
        assertTrue(standing.startsWith("C-002 is not among them: "), standing);
        assertTrue(standing.contains("nowhere worse and better in"), standing);
    }

    @Test
    void theDraftScoresTheOwnCogsAndTheBestInEach() {
        List<List<String>> rows = rows("cassette-decision", "lead");
        assertEquals(OWN, rows.get(0).get(0));
        assertEquals("10.0", rows.get(0).get(3), "no other option has less mismatch");
        for (int column = 1; column <= 4; column++) {
            int at = column;
            assertTrue(rows.stream().anyMatch(row -> row.get(at).equals("10.0")), "column " + column);
        }
    }

    @Test
    void contradictionsAndUnknownSettingsAreOneSentence() {
        assertTrue(refused("best-cassettes", "lead largest=12 cogs=11").contains("12"));
        assertTrue(refused("best-cassettes", "lead tallest=12").contains("no setting tallest"));
        assertTrue(refused("best-cassettes", "lead largest=large").contains("write a number or a range"));
    }

    private String refused(String block, String arguments) {
        return ((Unanswered) content.block(block, arguments)).toString();
    }
}
