package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which of several results counts. */
class TestFiguresTest {
    private static Asking results(String... results) {
        return Asking.about(
                Asking.record("C-001", "\"rings\": [30], \"cogs\": [15]"),
                Asking.record("R-001", """
                        "kind": "feel", "statement": "The lever force shall be at most 22 N.", "verification": "test",
                        "results": [%s]""".formatted(String.join(", ", results))));
    }

    private static String result(String id, String concept, String quantity, String value, String date) {
        return """
                {"id": "%s", "concept": "%s", "quantity": "%s", "value": %s, "unit": "N"%s}""".formatted(id, concept, quantity, value, date.isEmpty() ? "" : ", \"date\": \"" + date + "\"");
    }

    private static final String ASK = "test-result C-001 R-001 quantity=force";

    @Test
    void theLatestResultOfConceptAndQuantityCounts() {
        Asking asking = results(
                result("t1", "C-001", "force", "{\"value\": 24, \"plusMinus\": 2}", "2026-03-02"),
                result("t2", "C-001", "force", "30", "2026-01-10"),
                result("t3", "C-002", "force", "20", "2026-05-01"),
                result("t4", "C-001", "noise", "10", "2026-06-01"),
                result("t5", "C-001", "force", "99", ""));
        assertEquals(Quantity.of(24, new Unit("N")), asking.answer(ASK));
        assertEquals(Band.around(24, 2), asking.band(ASK));
    }

    @Test
    void ofEquallyOldResultsTheLastInTheListCounts() {
        assertEquals(
                2,
                results(result("a", "C-001", "force", "1", ""), result("b", "C-001", "force", "2", ""))
                        .value(ASK));
        assertEquals(
                4,
                results(
                                result("a", "C-001", "force", "3", "2026-01-01"),
                                result("b", "C-001", "force", "4", "2026-01-01"))
                        .value(ASK));
    }

    @Test
    void withoutAResultTheRemedyNamesTheConcept() {
        var missing =
                results(result("t3", "C-002", "force", "20", "2026-05-01")).missing(ASK);
        assertEquals(
                List.of("R-001.results"),
                missing.stream().map(m -> m.address().toString()).toList());
        assertEquals("record a result of force for C-001", missing.get(0).remedy());
    }
}
