package groupwright.definition.ledger;

import static groupwright.definition.ledger.Toys.ask;
import static groupwright.definition.ledger.Toys.id;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Part;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How much the ledger computes, and what it refuses. */
class LedgerTest {
    private static final int DEEPEST = 500;
    private final Catalogue catalogue = ToyFigures.catalogue();
    private final Concept concept = Toys.record(
            RecordKinds.CONCEPT,
            1,
            "cogs",
            List.of(10, 12, 14),
            "cogSpacing_mm",
            List.of(),
            "excludedGears",
            List.of());
    private final Definition start = Toys.empty().with(concept);
    private final Ledger ledger = new Ledger(catalogue, start, DEEPEST);

    private long computedIn(Runnable work) {
        long before = ledger.computations();
        work.run();
        return ledger.computations() - before;
    }

    private static Definition withCogs(Definition definition, Integer... cogs) {
        return definition.with(Address.of(id("C-001"), "cogs"), Optional.of(List.of(cogs)));
    }

    @Test
    void whatWasAskedBeforeIsNotComputedAgain() {
        Ask word = ask(catalogue, "parity-word", "C-001");
        assertEquals(3, computedIn(() -> ledger.ask(word))); // word, parity, count
        assertEquals(0, computedIn(() -> ledger.ask(word)));
        assertEquals(0, computedIn(() -> ledger.ask(ask(catalogue, "cog-parity", "C-001"))));
    }

    @Test
    void itStopsWhereAnAnswerComesOutEqual() {
        Ask word = ask(catalogue, "parity-word", "C-001");
        assertEquals(new Word("odd", ""), ledger.ask(word));
        ledger.moveTo(withCogs(start, 10, 12, 14, 16, 18));
        assertEquals(2, computedIn(() -> assertEquals(new Word("odd", ""), ledger.ask(word)))); // count, parity
        ledger.moveTo(withCogs(start, 10, 12, 15, 17, 19));
        assertEquals(1, computedIn(() -> ledger.ask(word))); // count
        ledger.moveTo(withCogs(start, 10, 12));
        assertEquals(3, computedIn(() -> assertEquals(new Word("even", ""), ledger.ask(word))));
    }

    @Test
    void anEditOfWhatWasNotReadCostsNothing() {
        Ask word = ask(catalogue, "parity-word", "C-001");
        ledger.ask(word);
        ledger.moveTo(start.with(Address.of(id("C-001"), "description"), Optional.of("another")));
        assertEquals(0, computedIn(() -> ledger.ask(word)));
        ledger.moveTo(ledger.definition().with(Toys.with(concept, id("C-002"))));
        assertEquals(0, computedIn(() -> ledger.ask(word)));
    }

    @Test
    void anEditAndItsUndoCostOneLookAndNoMore() {
        Ask word = ask(catalogue, "parity-word", "C-001");
        ledger.ask(word);
        ledger.moveTo(withCogs(start, 10, 12));
        ledger.moveTo(start);
        assertEquals(1, computedIn(() -> assertEquals(new Word("odd", ""), ledger.ask(word)))); // count, found equal
    }

    @Test
    void oneChangedRecordCostsOneBranchOfASum() {
        Definition definition = Toys.empty();
        for (int i = 0; i < 300; i++) {
            definition = definition.with(Toys.record(RecordKinds.PART, i, "parent", Optional.empty()));
        }
        ledger.moveTo(definition);
        Ask sum = ask(catalogue, "mass-by-basis", "");
        ledger.ask(sum);
        Address quantity = Address.of(id("P-123"), "quantity");
        int other = 1 + (Integer) definition.value(quantity).orElseThrow() % 9000;
        ledger.moveTo(definition
                .with(quantity, Optional.of(other))
                .with(Address.of(id("P-123"), "mass_g"), Optional.of(Amount.of(7))));
        long computed = computedIn(() -> ledger.ask(sum));
        assertEquals(2 + 5 + 1, computed, "part's mass and series, five levels of the tree, the sum");
    }

    @Test
    void aFigureThatAsksWhatItDoesNotNameIsCaught() {
        Figure count = catalogue.find("cog-count").orElseThrow();
        Figure sneaky = ToyFigures.named("sneaky", Scope.CONCEPT).computedBy(in -> in.ask("cog-count", in.subject()));
        Catalogue both = new Catalogue(List.of(count, sneaky));
        Ledger caught = new Ledger(both, start, DEEPEST);
        IllegalStateException thrown =
                assertThrows(IllegalStateException.class, () -> caught.ask(ask(both, "sneaky", "C-001")));
        assertEquals("sneaky asks cog-count without naming it among what it uses", thrown.getMessage());
        assertEquals(ToyFigures.number(3), caught.ask(ask(both, "cog-count", "C-001")));
        assertThrows(
                IllegalStateException.class,
                () -> caught.fork(withCogs(start, 9)).ask(ask(both, "sneaky", "C-001")));
    }

    @Test
    void aFigureThatLeadsBackToItselfIsCaughtAndTheLedgerStaysUsable() {
        Figure endless = ToyFigures.named("endless", Scope.PART).uses("endless").computedBy(in -> {
            RecordId parent = in.get(in.subject(Scope.PART), Part.PARENT).orElseThrow();
            return in.ask("endless", Subject.of(parent));
        });
        Catalogue one =
                new Catalogue(List.of(endless, catalogue.find("part-count").orElseThrow()));
        Definition circle = Toys.chain(3).with(Address.of(id("P-000"), "parent"), Optional.of(id("P-002")));
        Ledger caught = new Ledger(one, circle, DEEPEST);
        for (View view : List.of(caught, caught.fork(circle.with(concept)))) {
            IllegalStateException thrown =
                    assertThrows(IllegalStateException.class, () -> view.ask(ask(one, "endless", "P-001")));
            assertEquals("a figure asks itself: endless P-001", thrown.getMessage());
            assertEquals(ToyFigures.number(3), view.ask(ask(one, "part-count", "")));
        }
    }

    @Test
    void aForkRefusesAfterTheLedgerHasMoved() {
        Fork fork = ledger.fork(withCogs(start, 10, 12));
        Ask word = ask(catalogue, "parity-word", "C-001");
        assertEquals(new Word("even", ""), fork.ask(word));
        ledger.moveTo(withCogs(start, 10));
        assertThrows(IllegalStateException.class, () -> fork.ask(word));
        assertThrows(IllegalStateException.class, () -> fork.band(word));
        assertThrows(IllegalStateException.class, () -> fork.explain(word));
        assertThrows(IllegalStateException.class, () -> fork.trace(word));
        assertEquals(new Word("odd", ""), ledger.ask(word));
    }

    @Test
    void aForkSharesWhatTheDifferenceDoesNotTouch() {
        Definition definition = start.with(Toys.with(concept, id("C-002")));
        ledger.moveTo(definition);
        ledger.ask(ask(catalogue, "parity-word", "C-001"));
        ledger.ask(ask(catalogue, "parity-word", "C-002"));
        long before = ledger.computations();
        Answer own = ledger.ask(ask(catalogue, "parity-word", "C-002"));
        Fork fork = ledger.fork(withCogs(definition, 10, 12));
        assertTrue(own == fork.ask(ask(catalogue, "parity-word", "C-002")), "the same object");
        assertEquals(new Word("even", ""), fork.ask(ask(catalogue, "parity-word", "C-001")));
        assertEquals(before, ledger.computations());
    }

    private List<Ask> bigCogs(int first, int end) {
        List<Ask> asks = new ArrayList<>();
        for (int teeth = first; teeth < end; teeth++) {
            asks.add(ask(catalogue, "big-cogs", "C-001", "from-teeth", Integer.toString(teeth)));
        }
        return asks;
    }

    /** What counts is watched: asked again after each edit. The others are dropped once many have gathered. */
    @Test
    void sweepingDropsOnlyWhatWasNotAskedAgain() {
        bigCogs(0, 10_001).forEach(ledger::ask);
        List<Ask> watched = bigCogs(0, 100);
        ledger.moveTo(withCogs(start, 10, 12, 14, 16));
        watched.forEach(ledger::ask);
        bigCogs(20_000, 30_002).forEach(ledger::ask);
        assertEquals(20_003, ledger.size());
        ledger.moveTo(withCogs(start, 10, 12, 14, 16, 18));
        assertEquals(100 + 10_002, ledger.size());
        assertEquals(100, computedIn(() -> watched.forEach(ledger::ask)));
        Ledger fresh = new Ledger(catalogue, ledger.definition(), DEEPEST);
        bigCogs(0, 200).forEach(ask -> assertEquals(fresh.ask(ask), ledger.ask(ask)));
    }

    @Test
    void sweepingDropsAnswersWithTheirBandsAndWhatOnlyTheyRead() {
        Definition definition = start.with(RIDERS).with(Toys.with(RIDERS, id("G-002")));
        ledger.moveTo(definition);
        List<Ask> asks = List.of(
                ask(catalogue, "band-first", "G-001"),
                ask(catalogue, "band-first", "G-002"),
                ask(catalogue, "only-the-band", "G-002"));
        asks.forEach(ledger::ask);
        asks.forEach(ledger::band);
        ledger.ask(ask(catalogue, "parity-word", "C-001"));
        ledger.ask(ask(catalogue, "lead", ""));
        ledger.sweep();
        assertEquals(7 + 3 + 1, ledger.size(), "nothing is stale");
        int reads = ledger.inputs().size();
        ledger.moveTo(definition
                .with(Address.of(RecordId.PROJECT, "airDensity_kg_m3"), Optional.of(Amount.of(1.7)))
                .with(Address.of(RecordId.PROJECT, "leadConcept"), Optional.of(id("C-001"))));
        ledger.ask(asks.get(0));
        ledger.sweep();
        assertEquals(3 + 1 + 3, ledger.size(), "of G-002 only the settled weight is left");
        assertEquals(reads - 1, ledger.inputs().size(), "nobody asks for the lead concept any more");
        Ledger fresh = new Ledger(catalogue, ledger.definition(), DEEPEST);
        for (Ask ask : asks) {
            assertEquals(fresh.ask(ask), ledger.ask(ask));
            assertEquals(fresh.band(ask), ledger.band(ask));
        }
    }

    private static final RiderGroup RIDERS = Toys.record(
            RecordKinds.RIDER_GROUP,
            1,
            "luggage_kg",
            new Amount(10, 1),
            "riderMass_kg",
            Optional.of(new Amount(70, 2)));

    @ParameterizedTest
    @ValueSource(strings = {"P-003", "P-005", "P-008", "P-009", "P-010"})
    void aCircleOfParentsIsToldFromItsSmallestId(String from) {
        Definition circle = circleOfParents();
        ledger.moveTo(circle);
        Missing missing = (Missing) ledger.ask(ask(catalogue, "depth", from));
        assertEquals(
                "break the circle [P-003, P-008, P-005]",
                missing.inputs().get(0).remedy());
        assertEquals(Address.of(id("P-003"), "parent"), missing.inputs().get(0).address());
    }

    @Test
    void circlesAreFoundOnce() {
        var circles = Circles.find(circleOfParents(), Part.PARENT);
        assertEquals(5, circles.size());
        assertEquals(1, circles.values().stream().distinct().count());
    }

    /** Each part names another at random; the way from each is followed by hand. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyCircleIsFoundFromEverywhere(long seed) {
        Random random = new Random(seed);
        Definition definition = Toys.empty();
        for (int i = 0; i < 30; i++) {
            Optional<RecordId> parent =
                    random.nextInt(8) == 0 ? Optional.empty() : Optional.of(RecordId.of("P", random.nextInt(31)));
            definition = definition.with(Toys.record(RecordKinds.PART, i, "parent", parent));
        }
        Map<RecordId, List<RecordId>> found = Circles.find(definition, Part.PARENT);
        for (Part part : definition.all(RecordKinds.PART)) {
            assertEquals(circleByHand(definition, part.id()), found.getOrDefault(part.id(), List.of()), "seed " + seed);
        }
    }

    private static List<RecordId> circleByHand(Definition definition, RecordId from) {
        RecordId at = from;
        for (int i = 0; i < 40; i++) { // further than there are parts: now inside the circle, if there is one
            Optional<RecordId> next = definition.get(at, Part.class).flatMap(Part::parent);
            if (next.isEmpty()) {
                return List.of();
            }
            at = next.get();
        }
        TreeSet<RecordId> members = new TreeSet<>();
        while (members.add(at)) {
            at = definition.get(at, Part.class).flatMap(Part::parent).orElseThrow();
        }
        List<RecordId> circle = new ArrayList<>(List.of(members.first()));
        while (circle.size() < members.size()) {
            RecordId last = circle.get(circle.size() - 1);
            circle.add(definition.get(last, Part.class).flatMap(Part::parent).orElseThrow());
        }
        return circle;
    }

    /** 3, 8 and 5 are each other's parents; 10 and 9 lead into them; 1 and 2 lead nowhere, 4 to a part that is not there. */
    private static Definition circleOfParents() {
        Definition definition = Toys.empty();
        int[][] parents = {{3, 8}, {8, 5}, {5, 3}, {9, 5}, {10, 9}, {2, 1}, {4, 77}};
        for (int[] pair : parents) {
            definition = definition.with(
                    Toys.record(RecordKinds.PART, pair[0], "parent", Optional.of(RecordId.of("P", pair[1]))));
        }
        return definition.with(Toys.record(RecordKinds.PART, 1, "parent", Optional.empty()));
    }
}
