package groupwright.workbench.concepts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Lifecycle;
import groupwright.definition.record.RecordId;
import groupwright.workbench.Sample;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sheet of the invented sample. Its numbers were worked out outside this program: power balance solved by bisection
 * with 9.81 m/s², wheel of 736 mm, tooth counts and parts list by hand; a change of the sample changes this table.
 */
class ConceptsReadingTest {
    private static ConceptsSheet sheet(Definition definition, Shown shown, Locale locale) {
        Ledger ledger = Sample.ledger();
        ledger.moveTo(definition);
        return new ConceptsReading(ledger, locale).of(Optional.empty(), shown);
    }

    private static final ConceptsSheet SAMPLE = sheet(Sample.definition(), Shown.WORKED_ON, Locale.ENGLISH);

    private static ConceptsSheet.Row row(String requirement) {
        return SAMPLE.rows().stream()
                .filter(row -> row.requirement().map(RecordId::text).equals(Optional.of(requirement)))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            # requirement | figure | asked of | target | values of C-001, C-002, C-003
            R-007 | Gear range         |               | at least 480 %    | 518.2 450.0 500.0
            R-005 | Largest step       | 14 t up       | at most 18 %      | 18.8 20.0 18.8
            R-006 | Phase mismatch     | 16 t up       | at most 0.85 mm   | 0.79 0.91 0.79
            R-001 | Cadence on a climb | G-002, 12 %   | at least 50 rpm   | 57.1 50.7 53.0
            R-002 | Cadence on a climb | G-001, 15 %   | at least 65 rpm   | 78.7 69.9 73.1
            R-003 | Cadence on a climb | G-003, 8 %    | at least 52 rpm   | 56.2 50.0 52.2
            R-004 | Spin-out speed     | G-001, 95 rpm | at least 43 km/h  | 43.1 42.2 44.8
            R-010 | Unit cost          |               | at most 140.79 EUR| 141.96 136.12 140.81
            """)
    void saysWhatWasWorkedOutBeside(String requirement, String figure, String where, String target, String values) {
        ConceptsSheet.Row row = row(requirement);
        assertEquals(figure, row.figure());
        assertEquals(where == null ? "" : where, row.where().replace('\u202F', ' '));
        assertEquals(target, row.limit().orElseThrow().text().replace('\u202F', ' '));
        assertEquals(
                values,
                row.cells().stream()
                        .map(cell -> cell.value().orElseThrow().value())
                        .collect(Collectors.joining(" ")));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            R-001 | meets; meets, too close to call; meets
            R-005 | misses; misses; misses
            R-008 | missing input; meets; misses
            R-009 | misses; meets, too close to call; misses
            R-010 | misses; meets; misses, too close to call
            """)
    void verdictsAreThoseOfTheLedger(String requirement, String words) {
        String said = row(requirement).cells().stream()
                .map(cell -> cell.verdict().orElseThrow().words())
                .collect(Collectors.joining("; "));
        assertEquals(words, said);
    }

    @Test
    void theTitleCountsAndNamesTheWheel() {
        // ISO 5775: 622 + 2 · 57 = 736 mm; π · 0.736 = 2.312 m
        assertEquals("three side by side on the wheel 57-622, 2.312\u202Fm a turn", SAMPLE.summary());
    }

    @Test
    void conceptsThatAreParkedOrRetiredStandBehindTheOthers() {
        assertEquals(List.of("C-001", "C-002", "C-003"), ids(SAMPLE));
        assertEquals(List.of(3, 4, 4), SAMPLE.counts());
        Definition retired = Lifecycle.retire(Sample.definition(), Sample.id("C-001"), "too heavy");
        ConceptsSheet all = sheet(retired, Shown.WITH_RETIRED, Locale.ENGLISH);
        assertEquals(List.of("C-002", "C-003", "C-000", "C-001"), ids(all));
        assertEquals("too heavy", all.concepts().get(3).reason());
        assertEquals(List.of("C-002", "C-003", "C-000"), ids(sheet(retired, Shown.WITH_PARKED, Locale.ENGLISH)));
    }

    private static List<String> ids(ConceptsSheet sheet) {
        return sheet.concepts().stream().map(entrant -> entrant.id().text()).toList();
    }

    @Test
    void figuresNobodyAsksForHaveNoTarget() {
        ConceptsSheet.Row capacity = SAMPLE.rows().stream()
                .filter(row -> row.figure().equals("Total capacity"))
                .findFirst()
                .orElseThrow();
        assertTrue(capacity.limit().isEmpty());
        // 36 − 24 + 38 − 11; 45 − 10; 50 − 10
        assertEquals(
                "39 35 40",
                capacity.cells().stream()
                        .map(cell -> cell.value().orElseThrow().value())
                        .collect(Collectors.joining(" ")));
        assertTrue(capacity.cells().get(0).verdict().isEmpty());
    }

    @Test
    void whatIsMissingNamesTheFieldThatFillsIt() {
        ConceptsSheet.Cell travel = SAMPLE.rows().stream()
                .filter(row -> row.figure().equals("Side travel"))
                .findFirst()
                .orElseThrow()
                .cells()
                .get(0);
        assertTrue(travel.value().isEmpty());
        assertEquals(
                "C-001.cogSpacing_mm", travel.lacks().orElseThrow().address().toString());
        assertTrue(travel.name().contains("C-001.cogSpacing_mm: "), travel.name());
    }

    @Test
    void rowsOfOneFigureStandTogetherAndNameItOnce() {
        List<ConceptsSheet.Row> rows = SAMPLE.rows();
        for (int i = 1; i < rows.size(); i++) {
            boolean same = rows.get(i).figure().equals(rows.get(i - 1).figure());
            assertEquals(
                    same ? ConceptsSheet.Place.FURTHER : ConceptsSheet.Place.FIRST,
                    rows.get(i).place());
        }
        long names = rows.stream().map(ConceptsSheet.Row::figure).distinct().count();
        assertEquals(
                names,
                rows.stream()
                        .filter(row -> row.place() == ConceptsSheet.Place.FIRST)
                        .count());
    }

    @Test
    void theLastRowCountsWhatIsMetForCertain() {
        for (int concept = 0; concept < 3; concept++) {
            int at = concept;
            long certain = SAMPLE.rows().stream()
                    .flatMap(row -> row.cells().get(at).verdict().stream())
                    .filter(verdict -> verdict.words().equals("meets"))
                    .count();
            assertEquals(certain, (long) SAMPLE.meets().get(concept));
        }
        long agreed = SAMPLE.rows().stream()
                .filter(row -> row.requirement().isPresent())
                .count();
        assertEquals(agreed, SAMPLE.targets());
    }

    @Test
    void digitsAreThoseOfTheReader() {
        ConceptsSheet german = sheet(Sample.definition(), Shown.WORKED_ON, Locale.GERMAN);
        assertTrue(german.summary().contains("2,312"), german.summary());
        assertTrue(german.rows()
                .get(0)
                .cells()
                .get(0)
                .value()
                .orElseThrow()
                .value()
                .equals("518,2"));
    }

    @Test
    void barsSideBySideReachTheSameTop() {
        List<Double> tops = SAMPLE.concepts().stream()
                .map(entrant -> entrant.steps().orElseThrow().topPct())
                .distinct()
                .toList();
        assertEquals(List.of(20.0), tops); // 10 to 12 and 25 to 30
    }

    @Test
    void anotherRiderGroupShowsItsOwnNeeds() {
        Ledger ledger = Sample.ledger();
        ConceptsReading reading = new ConceptsReading(ledger, Locale.ENGLISH);
        var racer = reading.of(Optional.of(Sample.id("G-001")), Shown.WORKED_ON)
                .ladder()
                .orElseThrow();
        var loaded = reading.of(Optional.of(Sample.id("G-003")), Shown.WORKED_ON)
                .ladder()
                .orElseThrow();
        // R-004 is about G-001 only; 43 km/h at 95 rpm: 43 / 3.6 · 60 / 95 = 7.54 m
        assertTrue(racer.needs().stream().anyMatch(need -> Math.abs(need.developmentM() - 7.54) < 0.005));
        assertTrue(loaded.needs().stream().noneMatch(need -> need.sentence().contains("R-004")));
        assertTrue(loaded.needs().stream().anyMatch(need -> need.sentence().contains("R-003")));
    }

    @Test
    void withoutConceptsThereIsNothingToRead() {
        Definition none = Sample.definition();
        for (int i = 0; i < 4; i++) {
            none = none.without(RecordId.of("C", i));
        }
        ConceptsSheet empty = sheet(none, Shown.WITH_RETIRED, Locale.ENGLISH);
        assertEquals(List.of(), empty.rows());
        assertEquals("", empty.summary());
        assertTrue(empty.ladder().isEmpty());
    }
}
