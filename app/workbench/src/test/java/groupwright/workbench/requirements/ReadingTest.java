package groupwright.workbench.requirements;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.assessment.Rung;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.quality.StatementChecks;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.workbench.Sample;
import groupwright.workbench.components.Ladder;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How the requirements of the sample stand. Its data are invented; values and margins are those of an independent script and
 * of hand arithmetic on tooth counts: 100·(30/25 − 1) = 20 %, 100·(19/16 − 1) = 18.75 %.
 */
class ReadingTest {
    private static final StatementChecks CHECKS = StatementChecks.in(Locale.ENGLISH);
    private static final Reading READING = of(Sample.definition());
    private static final RequirementsSheet SHEET = READING.sheet();

    static Reading of(Definition definition) {
        Ledger ledger = Sample.ledger();
        ledger.moveTo(definition);
        return new Reading(ledger, CHECKS, Locale.ENGLISH);
    }

    private static Listed listed(String id) {
        return SHEET.listed().stream()
                .filter(one -> one.id().equals(Sample.id(id)))
                .findFirst()
                .orElseThrow();
    }

    private static Detail detail(Reading reading, String id) {
        return new DetailReading(reading).of(Sample.id(id)).orElseThrow();
    }

    private static String ascii(String text) {
        return text.replace('\u202F', ' ').replace('\u2009', ' ').replace('−', '-');
    }

    @Test
    void theTitleSaysHowManyAndOnWhichConcept() {
        assertEquals("49 for Tarnbeck, measured on the lead concept C-002", SHEET.summary());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        R-001 | Cadence on a climb  | G-002       | at least | 50 rpm      | 50.7 rpm   | +1.4  | meets, too close to call
        R-002 | Cadence on a climb  | G-001       | at least | 65 rpm      | 69.9 rpm   | +7.5  | meets
        R-003 | Cadence on a climb  | G-003       | at least | 52 rpm      | 50.0 rpm   | -3.9  | misses
        R-005 | Largest step        | 14 t up     | at most  | 18 %        | 20.0 %     | -11.1 | misses
        R-006 | Phase mismatch      | 16 t up     | at most  | 0.85 mm     | 0.91 mm    | -6.7  | misses
        R-009 | Weight, predicted   |             | at most  | 1830 g      | 1829 g     | +0.1  | meets, too close to call
        R-010 | Unit cost           |             | at most  | 140.79 EUR  | 136.12 EUR | +3.3  | meets
        R-011 | Chain drops         | test result | at most  | 0.2 1/1000 km | 0.162 1/1000 km | +19.0 | meets
        R-013 | Shifts in time      | test result | at least | 95 %     |            |       | missing input
        """)
    void aRowHoldsFigurePlaceTargetValueAndVerdict(
            String id,
            String figure,
            String where,
            String comparator,
            String target,
            String value,
            String margin,
            String verdict) {
        Row.Measured row = (Row.Measured) listed(id).rows().get(0);
        assertEquals(figure, row.figure());
        assertTrue(row.where().startsWith(where == null ? "" : where), row.where());
        assertEquals(comparator, row.limit().comparator());
        assertEquals(target, row.limit().number() + " " + row.limit().unit());
        assertEquals(
                value == null ? "" : value,
                row.value().map(shown -> ascii(shown.text())).orElse(""));
        assertEquals(margin == null ? "" : margin, ascii(row.margin()));
        assertEquals(verdict, row.verdict().orElseThrow().words());
        assertEquals(value == null, row.missing().isPresent());
        assertTrue(row.ask().isPresent());
    }

    @Test
    void theBarIsTheMarginAsShareOfTheTarget() {
        Row.Measured row = (Row.Measured) listed("R-005").rows().get(0);
        assertEquals(-2.0 / 18, row.bar().orElseThrow().margin(), 1e-9);
        assertEquals("largest-step C-002 from-teeth=14", row.ask().orElseThrow().toString());
    }

    @Test
    void aTargetOfZeroHasNoShareAndNoBarButAVerdict() {
        Row.Measured row = (Row.Measured) listed("R-040").rows().get(0); // at most 0 chain drops backwards
        assertTrue(row.bar().isEmpty());
        assertEquals("meets", row.verdict().orElseThrow().words());
    }

    @Test
    void eachCriterionHasARow() {
        Listed lever = listed("R-015");
        assertEquals(
                List.of("k1", "k2"), lever.rows().stream().map(Row::criterion).toList());
        assertEquals(-9.1, lever.margin().orElseThrow(), 0.05); // 24 against 22 N
    }

    @Test
    void facetsCountRequirementsByTheirWorstVerdict() {
        Listing listing = Listing.of(SHEET, Filter.NONE, any -> false);
        assertEquals(49, listing.counts().get(Facet.ALL));
        assertEquals(6, listing.counts().get(Facet.MISSES));
        assertEquals(2, listing.counts().get(Facet.TOO_CLOSE));
        assertEquals(
                7, listing.counts().get(Facet.NOT_MEASURABLE)); // 49 less the 42 that coverage counts as measurable
        assertEquals(7, listing.counts().get(Facet.DRAFT));
        assertEquals(0, listing.counts().get(Facet.RETIRED));
        long meets = SHEET.listed().stream()
                .filter(one -> one.facets().equals(Set.of(Facet.ALL)))
                .count();
        assertEquals(
                49 - 6 - 2 - 7 - meets,
                listing.counts().get(Facet.MISSING_INPUT).longValue());
        assertEquals(49 - meets, Reading.open(READING.view()));
    }

    @Test
    void filtersLeaveWhatAllOfThemPass() {
        Filter filter = Filter.NONE.withWords("cadence climb").withRiders(Optional.of(Sample.id("G-003")));
        List<String> ids = Listing.of(SHEET, filter, any -> false).lines().stream()
                .map(line -> line.listed().id().text())
                .distinct()
                .toList();
        assertTrue(ids.containsAll(List.of("R-003", "R-032")), ids.toString());
        assertTrue(!ids.contains("R-001") && !ids.contains("R-005"), ids.toString());
    }

    @Test
    void theWorstMarginStandsFirst() {
        List<Listed> order = Listing.of(SHEET, Filter.NONE.with(Sorting.MARGIN), any -> false).lines().stream()
                .map(Listing.Line::listed)
                .distinct()
                .toList();
        assertEquals("R-005", order.get(0).id().text()); // −11.1 %
        assertEquals("R-015", order.get(1).id().text()); // −9.1 %
        assertTrue(order.get(48).margin().isEmpty());
    }

    @Test
    void whatCannotBeMeasuredSaysWhyAndWhatToDo() {
        Row.Note note = (Row.Note) listed("R-019").rows().get(0);
        assertEquals("Several in one, nothing to measure. Split it, then choose a figure for each.", note.sentence());
        assertEquals(Row.Step.CHOOSE_FIGURE, note.step());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "R-001, REACHED, OPEN, OPEN", // too close to call: empty, not broken
        "R-005, REACHED, FAILS, OPEN",
        "R-002, REACHED, REACHED, OPEN",
        "R-011, REACHED, REACHED, REACHED",
        "R-012, REACHED, OPEN, OPEN",
        "R-019, OPEN, OPEN, OPEN"
    })
    void onlyACertainMissBreaksARung(String id, Ladder.Step measurable, Ladder.Step calculated, Ladder.Step tested) {
        Ladder ladder = listed(id).ladder();
        assertEquals(Ladder.Step.REACHED, ladder.at(Rung.STATED));
        assertEquals(measurable, ladder.at(Rung.MEASURABLE));
        assertEquals(calculated, ladder.at(Rung.CALCULATED));
        assertEquals(tested, ladder.at(Rung.TESTED));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
        R-005 | lower largest step by 2.0 %, from 20.0 % to at most 18 %, or agree another target with G-001 and G-002.
        R-003 | raise cadence on a climb by 2.0 rpm, from 50.0 rpm to at least 52 rpm, or agree another target with G-003.
        R-019 | write one statement for each thing it asks, then choose a figure and a target for each.
        R-021 | choose the figure that measures it and the target it must reach.
        R-012 | record a result of chain-life-b10 for C-002.
        R-011 | nothing more; it is tested and met.
        R-002 | nothing more; it is verified by analysis.
        """)
    void theNextStepFollowsFromHowItStands(String id, String next) {
        assertEquals(next, ascii(detail(READING, id).next().sentence()));
    }

    @Test
    void aMissingInputLeadsToItsField() {
        Detail.Link link = detail(READING, "R-012").next().fields().get(0);
        assertEquals("R-012.results", link.leadsTo().toString());
    }

    @Test
    void whatIsTooCloseToCallNamesWhatToFindOut() {
        Detail.Next next = detail(READING, "R-001").next();
        assertTrue(next.sentence().startsWith("find out "), next.sentence());
        assertEquals(1, next.fields().size());
        // weight has a closed form, so no single input stands out
        Detail.Next weight = detail(READING, "R-009").next();
        assertTrue(weight.sentence().startsWith("narrow the band of weight, predicted, now "), weight.sentence());
    }

    @Test
    void theSmallestLimitAnyConceptMeetsIsNamed() {
        assertEquals(
                List.of("18.75 % is the smallest limit that any concept meets (C-001, C-003)."),
                detail(READING, "R-005").relaxing().stream()
                        .map(ReadingTest::ascii)
                        .toList());
        assertEquals(List.of(), detail(READING, "R-002").relaxing());
    }

    @Test
    void findingsNameTheWordsAtTheirPlace() {
        Detail bad = detail(READING, "R-019");
        assertEquals(4, bad.findings().size());
        for (Detail.Advice advice : bad.findings()) {
            assertEquals(
                    advice.finding().words(),
                    bad.statement()
                            .substring(advice.finding().from(), advice.finding().to()));
        }
        assertTrue(bad.findings().stream().anyMatch(advice -> advice.title().equals("Several in one")));
    }

    @Test
    void theLadderSaysWhatWasReachedAndByWhat() {
        Detail step = detail(READING, "R-005");
        assertEquals("20.0 %, from 25 to 30 teeth", ascii(step.reached().get(Rung.CALCULATED)));
        assertEquals("Largest step, at most 18 %", ascii(step.reached().get(Rung.MEASURABLE)));
        assertEquals("by analysis; no test asked", step.reached().get(Rung.TESTED));
        assertEquals(
                "0.162 1/1000 km, 27 February 2026, n = 3",
                ascii(detail(READING, "R-011").reached().get(Rung.TESTED)));
    }

    @Test
    void parkedAndRetiredOnesSayWhyAndCountNowhereElse() {
        Definition changed = Sample.definition()
                .with(Address.parse("R-005.state").orElseThrow(), Optional.of(Requirement.State.PARKED))
                .with(Address.parse("R-005.stateReason").orElseThrow(), Optional.of("wait for the riders"))
                .with(Address.parse("R-006.retired").orElseThrow(), Optional.of("no longer asked"));
        RequirementsSheet sheet = of(changed).sheet();
        assertEquals("48 for Tarnbeck, measured on the lead concept C-002", sheet.summary());
        Listing listing = Listing.of(sheet, Filter.NONE, any -> false);
        assertEquals(4, listing.counts().get(Facet.MISSES));
        assertEquals(
                "Parked: wait for the riders|Retired: no longer asked",
                sheet.listed().stream()
                        .flatMap(one -> one.rows().stream())
                        .filter(Row.Note.class::isInstance)
                        .map(row -> ((Row.Note) row).sentence())
                        .filter(sentence -> sentence.contains("ed: "))
                        .collect(Collectors.joining("|")));
    }

    @Test
    void withoutALeadConceptNothingIsMeasured() {
        RequirementsSheet sheet = of(Sample.definition()
                        .with(Address.of(RecordId.PROJECT, "leadConcept"), Optional.empty()))
                .sheet();
        Row.Measured row = (Row.Measured) sheet.listed().get(0).rows().get(0);
        assertTrue(row.value().isEmpty() && row.verdict().isEmpty() && row.ask().isEmpty());
    }
}
