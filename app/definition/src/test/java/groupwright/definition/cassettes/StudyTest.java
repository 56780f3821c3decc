package groupwright.definition.cassettes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Scene;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Decision;
import groupwright.definition.record.RecordId;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Standing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A cassette of four cogs among its like. */
class StudyTest {
    private static final Concept CONCEPT =
            (Concept) Scene.record("C-001", "\"rings\": [30], \"cogs\": [10, 12, 15, 20]");

    @Test
    void withoutMoreItAsksForItsOwnEndsAndLargestStep() {
        Study study = Study.of(CONCEPT, Study.Among.AS_IT_IS);
        assertEquals("36", study.best().coverage().candidates().toString(), "two of nine teeth between 10 and 20");
        // no step above 20/15, so the third cog has at least 15 teeth
        assertTrue(study.best().stream()
                .allMatch(found -> found.cassette().cogs().get(2).teeth() >= 15));
        assertEquals("10 12 15 20", DecisionDraft.teeth(study.own().cassette()));
        assertEquals(4, study.neighbours().size());
    }

    @Test
    void rangesAskForMore() {
        Study.Among wider =
                new Study.Among(Optional.empty(), Optional.of(new Span(19, 21)), Optional.empty(), Optional.of(60.0));
        assertTrue(Study.of(CONCEPT, wider).best().question().comparesAll());
        Study.Among elsewhere =
                new Study.Among(Optional.empty(), Optional.of(Span.of(30)), Optional.empty(), Optional.of(60.0));
        assertTrue(Study.of(CONCEPT, elsewhere).standing() instanceof Standing.Outside);
    }

    @Test
    void theDraftScoresFromTheWorstToTheBestAndChoosesNothing() {
        Study study = Study.of(CONCEPT, Study.Among.AS_IT_IS);
        List<Found> others = study.best().stream().limit(3).toList();
        Decision draft = DecisionDraft.of(RecordId.of("D", 7), study, others);
        assertEquals("", draft.choice());
        assertEquals(
                List.of(25.0, 25.0, 25.0, 25.0),
                draft.criteria().stream()
                        .map(criterion -> criterion.weight_pct().value())
                        .toList());
        for (Decision.Weighing criterion : draft.criteria()) {
            List<Double> scores = draft.scores().stream()
                    .filter(score -> score.criterion().equals(criterion.id()))
                    .map(score -> score.score().value())
                    .toList();
            assertEquals(draft.options().size(), scores.size());
            assertEquals(
                    10, scores.stream().mapToDouble(Double::doubleValue).max().orElseThrow());
        }
        assertEquals(Optional.of(CONCEPT.id()), draft.options().get(0).concept());
    }
}
