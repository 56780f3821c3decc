package groupwright.workbench.claims;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.ledger.Ledger;
import groupwright.workbench.Sample;
import groupwright.workbench.components.Evidence.Pin;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Against the sample project, whose claims were written to stand five in each state. */
class ClaimsReadingTest {
    private static final Ledger LEDGER = Sample.ledger();

    private static ClaimsReading reading(Locale locale) {
        return new ClaimsReading(LEDGER, locale);
    }

    private static ClaimRow row(String id) {
        return reading(Locale.UK).sheet().rows().stream()
                .filter(row -> row.id().text().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(value = ClaimGroup.class, names = "RETIRED", mode = EnumSource.Mode.EXCLUDE)
    void fiveClaimsStandInEachGroup(ClaimGroup group) {
        assertEquals(5, reading(Locale.UK).sheet().counts().get(group));
    }

    @ParameterizedTest
    @CsvSource({ // the sample: basic weight without growth allowance then; C-003 was the lead; cogs edited since
        "K-011, 1757, 1829 g, R-009", // 1757 + 4 and 8 % allowance, as the sample's totals say
        "K-012, 1757, 1829 g, R-009",
        "K-013, 44.8, 42.2 km/h, R-004",
        "K-014, 17.9, 20.0 %, R-005", // 100 (30 / 25 - 1), ratio of tooth counts
        "K-015, 6, 4, R-016"
    })
    void aChangedClaimShowsThenAndNow(String id, String then, String now, String leads) {
        ClaimRow row = row(id);
        Rest rest = row.first().orElseThrow();
        assertEquals(ClaimGroup.CHANGED, row.group());
        assertEquals(then, rest.then().orElseThrow().value());
        assertEquals(now, rest.now().text().replace('\u202f', ' '));
        assertEquals(leads, row.leads().orElseThrow().toString());
        assertEquals(Pin.CHANGED, row.evidence().orElseThrow().pins().get(0));
    }

    @ParameterizedTest
    @CsvSource({
        "K-001, MISSES, NOTHING, NOTHING, R-007 misses",
        "K-002, PLANNED, PLANNED, NOTHING, R-014 has no result yet",
        "K-007, HOLDS, HOLDS, HOLDS, ''",
        "K-010, HOLDS, NOTHING, HOLDS, too close to call now",
        "K-013, CHANGED, NOTHING, HOLDS, no longer at least 44 km/h",
        "K-017, NOTHING, NOTHING, NOTHING, no figure and no test"
    })
    void evidenceAndWhatIsOpenAreWorkedOut(String id, Pin figure, Pin test, Pin signed, String open) {
        ClaimRow row = row(id);
        assertEquals(List.of(figure, test, signed), row.evidence().orElseThrow().pins());
        assertEquals(open, row.open().replace('\u202f', ' '));
    }

    @Test
    void wordingsCarryTodaysNumbersInTheReadersDigits() {
        assertEquals(
                "“450.0\u202f% range from one ring”", row("K-006").wording().quoted());
        String german = new WordingReading(LEDGER, Locale.GERMANY)
                .of("{{gear-range lead}}!")
                .text();
        assertEquals("450,0\u202f%!", german);
    }

    @Test
    void aMistypedFigureIsNamedWithTheNearest() {
        Wording wording = new WordingReading(LEDGER, Locale.UK).of("{{gear-rang lead}} range");
        assertEquals(List.of("There is no figure \"gear-rang\". Did you mean gear-range?"), wording.wrong());
        assertTrue(wording.text().endsWith(" range"));
    }

    @Test
    void bracesThatAreNotClosedLeaveTheTextAsTyped() {
        Wording wording = new WordingReading(LEDGER, Locale.UK).of("over {{gear-range");
        assertEquals("over {{gear-range", wording.text());
        assertEquals(1, wording.wrong().size());
    }

    @Test
    void theDetailNamesTheInputsThatChangedSinceApproval() {
        ClaimDetail detail = reading(Locale.UK).detail(Sample.id("K-011")).orElseThrow();
        String changes = detail.rests().get(0).inputs().stream()
                .map(input -> input.label() + " " + input.then() + " → " + input.now())
                .collect(Collectors.joining("; "))
                .replace('\u202f', ' ');
        assertEquals("project allowance calculated 0 % → 4 %; project allowance estimated 0 % → 8 %", changes);
        assertEquals("marketing lead", detail.approvals().get(0).by());
    }

    @Test
    void aWithdrawnClaimKeepsItsReasonAndNoEvidence() {
        ClaimRow row = row("K-022");
        assertTrue(row.evidence().isEmpty());
        assertTrue(row.open().contains("true of no chain"), row.open());
    }
}
