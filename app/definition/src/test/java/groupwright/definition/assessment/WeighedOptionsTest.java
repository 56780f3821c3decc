package groupwright.definition.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Decision;
import groupwright.definition.record.RecordId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WeighedOptionsTest {
    private static Decision decision(double first, double second, List<Decision.Score> scores) {
        return new Decision(
                RecordId.parse("D-001").orElseThrow(),
                "t",
                "q",
                List.of(new Decision.Option("a", "A", Optional.empty())),
                List.of(
                        new Decision.Weighing("one", "One", Amount.of(first)),
                        new Decision.Weighing("two", "Two", Amount.of(second))),
                scores,
                "",
                "",
                "",
                Optional.empty(),
                List.of(),
                "");
    }

    private static Decision.Score score(String criterion, double value) {
        return new Decision.Score("a-" + criterion, "a", criterion, Amount.of(value));
    }

    @Test
    void theMeanIsWeighedWhateverTheWeightsAddUpTo() {
        WeighedOptions weighed = new WeighedOptions(decision(1, 3, List.of(score("one", 8), score("two", 4))));
        assertEquals(Optional.of(5.0), weighed.mean("a")); // (1 · 8 + 3 · 4) / 4
    }

    @Test
    void aMissingScoreLeavesNoMeanUnlessItsCriterionDoesNotCount() {
        assertEquals(Optional.empty(), new WeighedOptions(decision(1, 3, List.of(score("one", 8)))).mean("a"));
        assertEquals(Optional.of(8.0), new WeighedOptions(decision(1, 0, List.of(score("one", 8)))).mean("a"));
        assertEquals(Optional.empty(), new WeighedOptions(decision(0, 0, List.of())).mean("a"));
    }
}
