package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Unit;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.LedgerThread;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Weight and cost of sets: assemblies, concepts, bands, bad parts, and how much an edit asks again. */
class SetFiguresTest {
    private static final Entry CONCEPT = Asking.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]");
    private static final Entry OTHER = Asking.record("C-002", "\"rings\": [30], \"cogs\": [15, 30]");

    private static Asking with(Entry... parts) {
        List<Entry> all = new ArrayList<>(List.of(parts));
        all.add(CONCEPT);
        all.add(OTHER);
        return Asking.about(all.toArray(Entry[]::new));
    }

    private static Entry part(int number, String fields) {
        return Asking.record("P-%03d".formatted(number), fields);
    }

    @Test
    void quantitiesMultiplyDownTheAssemblies() {
        Asking asking = with(
                part(1, "\"quantity\": 2, \"mass_g\": 999"), // an assembly counts through what it holds
                part(2, "\"parent\": \"P-001\", \"quantity\": 3, \"mass_g\": 10"),
                part(3, "\"parent\": \"P-002\", \"quantity\": 5, \"mass_g\": 1"),
                part(4, "\"parent\": \"P-001\", \"mass_g\": 7"));
        assertEquals(30, asking.value("pieces P-003"));
        assertEquals(44, asking.value("mass-basic C-001")); // 30 · 1 + 2 · 7
        assertEquals(30, asking.value("part-mass-basic P-003"));
        assertEquals(32.4, asking.value("part-mass-predicted P-003"), 1e-9); // estimated: 8 %
        assertEquals(1.5, asking.value("part-mass-spread P-003"), 1e-9); // estimated: 5 %
    }

    @Test
    void aPartCountsForTheConceptsItNamesAndItsAssemblyNames() {
        Asking asking = with(
                part(1, "\"concepts\": [\"C-001\"]"),
                part(2, "\"parent\": \"P-001\", \"mass_g\": 10"), // names none, but stands in an assembly that does
                part(3, "\"mass_g\": 5"),
                part(4, "\"concepts\": [\"C-002\"], \"mass_g\": 1"),
                part(5, "\"concepts\": [\"C-002\"], \"parent\": \"P-001\", \"mass_g\": 100"));
        assertEquals(15, asking.value("mass-basic C-001"));
        assertEquals(6, asking.value("mass-basic C-002"));
    }

    @Test
    void retiredPartsDoNotCount() {
        Asking asking = with(
                part(1, "\"mass_g\": 50"),
                part(2, "\"parent\": \"P-001\", \"mass_g\": 10, \"retired\": \"one piece now\""),
                part(3, "\"retired\": \"not used\""),
                part(4, "\"parent\": \"P-003\", \"mass_g\": 10"));
        assertEquals(50, asking.value("mass-basic C-001")); // P-001 holds nothing current, so it counts itself
    }

    @Test
    void aConceptWithoutPartsHasNoWeight() {
        var missing = with(part(1, "\"mass_g\": 50, \"quantity\": 0")).missing("mass-predicted C-001");
        assertEquals("C-001", missing.get(0).address().toString());
        assertTrue(missing.get(0).remedy().contains("no part belongs to it"));
    }

    @Test
    void aCircleOfAssembliesIsNamedFromItsSmallestId() {
        Asking asking = with(
                part(1, "\"parent\": \"P-003\", \"mass_g\": 1"),
                part(2, "\"parent\": \"P-001\", \"mass_g\": 1"),
                part(3, "\"parent\": \"P-002\", \"mass_g\": 1"),
                part(4, "\"parent\": \"P-003\", \"mass_g\": 1"),
                part(5, "\"mass_g\": 1"));
        for (String figure : List.of("mass-basic C-001", "unit-cost C-001", "pieces P-004")) {
            var missing = asking.missing(figure);
            assertEquals(1, missing.size(), figure);
            assertEquals("P-001.parent", missing.get(0).address().toString(), figure);
            assertTrue(
                    missing.get(0).remedy().contains("P-001 → P-003 → P-002 → P-001"),
                    missing.get(0).remedy());
        }
    }

    @Test
    void tenThousandAssembliesInsideEachOtherCostOneComputationEach() throws InterruptedException {
        List<Entry> parts = new ArrayList<>(List.of(CONCEPT));
        for (int i = 1; i < 10_000; i++) {
            parts.add(part(i, "\"parent\": \"P-%03d\"".formatted(i + 1)));
        }
        parts.add(part(0, "\"parent\": \"P-001\", \"mass_g\": 3"));
        parts.add(part(10_000, "\"quantity\": 2"));
        Asking asking = Asking.about(parts.toArray(Entry[]::new));
        Ledger deep = new Ledger(Asking.CATALOGUE, asking.ledger.definition(), Ledger.DEEPEST);
        try (LedgerThread thread = new LedgerThread()) {
            assertEquals(Quantity.of(6, Unit.GRAM), thread.call(() -> deep.ask(asking.ask("mass-basic C-001"))));
        }
        assertEquals(10_001 + 2, deep.computations()); // pieces of each part, weight of the innermost, the sum
    }

    @Test
    void anAssemblyThatIsNotThereIsNamed() {
        var missing = with(part(1, "\"parent\": \"P-009\", \"mass_g\": 1")).missing("mass-basic C-001");
        assertEquals("P-009", missing.get(0).address().toString());
    }

    @Test
    void tooManyPiecesAreRefused() {
        Asking asking = with(
                part(1, "\"quantity\": 10000"), part(2, "\"parent\": \"P-001\", \"quantity\": 10000, \"mass_g\": 1"));
        assertEquals(
                "P-002.quantity",
                asking.missing("mass-basic C-001").get(0).address().toString());
    }

    @Test
    void allowanceAndSpreadComeFromThePartOrItsBasis() {
        Asking asking = with(
                part(1, "\"mass_g\": 100, \"basis\": \"estimated\""),
                part(2, "\"mass_g\": 100, \"basis\": \"calculated\""),
                part(3, "\"mass_g\": 100, \"basis\": \"weighed\", \"spread_g\": 2.5"),
                part(4, "\"mass_g\": {\"value\": 100, \"plusMinus\": 3}, \"allowance_pct\": 20"));
        assertEquals(List.of(8.0, 4.0, 0.0, 20.0), each(asking, "part-allowance"));
        assertEquals(List.of(5.0, 2.5, 2.5, 3.0), each(asking, "part-mass-spread"));
        assertEquals(432, asking.value("mass-predicted C-001"), 1e-9);
        assertEquals(-32, asking.value("mass-margin C-001 budget=400"), 1e-9);
    }

    private static List<Double> each(Asking asking, String figure) {
        return List.of(1, 2, 3, 4).stream()
                .map(number -> asking.value(figure + " P-00" + number))
                .toList();
    }

    @Test
    void independentSpreadsAddAsARootOfSquaresAndCommonOnesPlainly() {
        // identity: 3 and 4 g give 5 g if independent, 7 g if wrong together
        assertEquals(5, halfWidth(spreads(0)), 1e-9);
        assertEquals(7, halfWidth(spreads(1)), 1e-9);
        // normal distribution: nine in ten lie below 1.2816 standard deviations
        assertEquals(207 + 1.2816 * 5, spreads(0).value("mass-p90 C-001"), 1e-3);
        assertEquals(207 + 1.2816 * 7, spreads(0).value("mass-p90 C-001 correlation=1"), 1e-3);
        assertEquals(Band.NOT_STATED, spreads(0).band("mass-p90 C-001"));
    }

    private static Asking spreads(int correlation) {
        return Asking.about(
                Asking.record("project", "\"name\": \"Test\", \"weightCorrelation\": " + correlation),
                CONCEPT,
                part(1, "\"mass_g\": 107, \"spread_g\": 3, \"allowance_pct\": 0"),
                part(2, "\"mass_g\": 100, \"spread_g\": 4, \"allowance_pct\": 0"));
    }

    private static double halfWidth(Asking asking) {
        Band.Between band = assertInstanceOf(Band.Between.class, asking.band("mass-predicted C-001"));
        assertEquals(asking.value("mass-predicted C-001"), (band.low() + band.high()) / 2, 1e-9);
        return (band.high() - band.low()) / 2;
    }

    @Test
    void costIsInTheMajorUnitOfTheCurrency() {
        assertEquals("43 JPY", cost("JPY", 43)); // ISO 4217: no minor unit
        assertEquals("0.43 EUR", cost("EUR", 43)); // hundredths
        assertEquals("0.043 KWD", cost("KWD", 43)); // thousandths
        assertEquals("0.43 QQQ", cost("QQQ", 43)); // no such currency: hundredths
    }

    private static String cost(String currency, int minor) {
        var cost = Asking.about(
                        Asking.record("project", "\"name\": \"Test\", \"currency\": \"" + currency + "\""),
                        CONCEPT,
                        part(1, "\"unitCost_minor\": " + minor))
                .quantity("unit-cost C-001");
        return groupwright.definition.ledger.ValueText.number(cost.value()) + " " + cost.unit();
    }

    @Test
    void costHasTheProjectsBandOrThatOfItsParts() {
        assertEquals(Band.NOT_STATED, costBand("", "100"));
        assertEquals(Band.around(2, 0.5), costBand(", \"costBand_minor\": 50", "100"));
        assertEquals(Band.around(2, 0.2), costBand("", "{\"value\": 100, \"plusMinus\": 10}"));
        // no tooling stated but for its band, and no life volume: the band of tooling goes for nothing
        assertEquals(Band.NOT_STATED, costBand("", "100, \"tooling_minor\": {\"value\": 0, \"plusMinus\": 10}"));
        assertEquals(
                Band.around(2, 0.05),
                costBand(", \"lifeVolume\": 200", "100, \"tooling_minor\": {\"value\": 0, \"plusMinus\": 1000}"));
    }

    private static Band costBand(String project, String cost) {
        return Asking.about(
                        Asking.record("project", "\"name\": \"Test\"" + project),
                        CONCEPT,
                        part(1, "\"quantity\": 2, \"unitCost_minor\": " + cost))
                .band("unit-cost C-001");
    }

    @Test
    void aPartsWeightAsksAgainOnlyWhatHoldsIt() {
        Asking asking = SampleProject.asking();
        List<String> asked = new ArrayList<>();
        for (String figure : List.of("mass-basic", "mass-predicted", "unit-cost", "gear-range", "largest-step")) {
            List.of("C-001", "C-002", "C-003").forEach(concept -> asked.add(figure + " " + concept));
        }
        asked.forEach(asking::answer);
        long before = asking.ledger.computations();
        Address mass = Address.parse("P-012.mass_g").orElseThrow();
        asking.ledger.moveTo(asking.ledger.definition().with(mass, Optional.of(Amount.of(183))));
        asked.forEach(asking::answer);
        // the part's own weight, and basic and predicted weight of the one concept that has it
        assertEquals(3, asking.ledger.computations() - before);
        assertEquals(1758, asking.value("mass-basic C-002"), 1e-9);
    }

    @Test
    void aCogAsksAgainOnlyItsConcept() {
        Asking asking = SampleProject.asking();
        List<String> asked = List.of(
                "gear-range C-002", "largest-step C-002", "gear-range C-003", "mass-basic C-002", "unit-cost C-002");
        asked.forEach(asking::answer);
        long before = asking.ledger.computations();
        Address cogs = Address.parse("C-002.cogs").orElseThrow();
        asking.ledger.moveTo(asking.ledger
                .definition()
                .with(cogs, Optional.of(List.of(10, 12, 14, 16, 18, 21, 25, 30, 35, 40, 46))));
        asked.forEach(asking::answer);
        assertEquals(2, asking.ledger.computations() - before);
        assertEquals(460, asking.value("gear-range C-002"), 1e-9);
    }
}
