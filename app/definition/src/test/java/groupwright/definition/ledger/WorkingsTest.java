package groupwright.definition.ledger;

import static groupwright.definition.ledger.Toys.ask;
import static groupwright.definition.ledger.Toys.id;
import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Part;
import groupwright.definition.record.RandomRecords;
import groupwright.definition.record.RecordKinds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What an answer says about where it came from. */
class WorkingsTest {
    private final Catalogue catalogue = ToyFigures.catalogue();

    @Test
    void aFigureTellsWhatItReadInThatOrder() {
        Part part = Toys.record(
                RecordKinds.PART,
                1,
                "mass_g",
                Optional.of(new Amount(12.5, 0.5)),
                "quantity",
                3,
                "parent",
                Optional.empty());
        Ledger ledger = new Ledger(catalogue, Toys.empty().with(part), 100);
        Workings workings = ledger.explain(ask(catalogue, "part-mass", "P-001"));
        assertEquals(
                List.of(
                        new Workings.FieldInput(
                                Address.of(id("P-001"), "mass_g"), Optional.of(new Amount(12.5, 0.5)), "g"),
                        new Workings.FieldInput(Address.of(id("P-001"), "quantity"), 3, "")),
                workings.inputs());
        assertEquals("12.5 ± 0.5", workings.inputs().get(0).text());
        assertEquals(ToyFigures.number(37.5), workings.answer());
        assertEquals(Band.around(37.5, 1.5), workings.band());
        assertEquals(List.of(), workings.uses());

        Workings depth = ledger.explain(ask(catalogue, "depth", "P-001"));
        assertEquals(List.of(new Read.Circle(Part.PARENT, id("P-001"))), depth.others());
        Workings series = ledger.explain(ask(catalogue, "mass-series", "P-001"));
        assertEquals(
                List.of(new Workings.Use(ask(catalogue, "part-mass", "P-001"), ToyFigures.number(37.5))),
                series.uses());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void whatIsToldIsWhatTheLedgerRemembers(long seed) {
        Definition definition = new RandomRecords(new Random(seed)).project(90);
        Ledger ledger = new Ledger(catalogue, definition, 100);
        for (Ask ask : ToyFigures.asks(catalogue, definition)) {
            long before = ledger.computations();
            Workings workings = ledger.explain(ask);
            assertEquals(ledger.ask(ask), workings.answer());
            List<Address> fields = new ArrayList<>();
            List<Read> others = new ArrayList<>();
            List<Ask> uses = new ArrayList<>();
            for (Node node : ledger.settled(ask).inputs()) {
                if (node instanceof AnswerNode answer) {
                    uses.add(answer.ask);
                } else if (node instanceof FieldNode field) {
                    if (field.value != Source.ABSENT) {
                        fields.add(field.read().address());
                    }
                } else if (node instanceof InputNode input) {
                    others.add(input.read());
                }
            }
            if (!ask.figure().id().matches("traced|band-first|only-the-band|mass-by-basis")) { // these go further
                assertEquals(
                        fields,
                        workings.inputs().stream()
                                .map(Workings.FieldInput::address)
                                .toList(),
                        "" + ask);
                assertEquals(others, workings.others(), "" + ask);
                assertEquals(
                        uses, workings.uses().stream().map(Workings.Use::ask).toList(), "" + ask);
            }
            long after = ledger.computations();
            ledger.explain(ask);
            assertEquals(after, ledger.computations(), "telling computes no answer, " + before);
        }
    }

    /** What lies behind an answer is what the figure read itself, and what lies behind the figures it asked. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {4, 5, 6})
    void theTraceIsAllThatIsToldOnTheWay(long seed) {
        Definition definition = new RandomRecords(new Random(seed)).project(90);
        Ledger ledger = new Ledger(catalogue, definition, 100);
        for (Ask ask : ToyFigures.asks(catalogue, definition)) {
            if (!ask.figure().id().matches("traced|band-first|only-the-band|mass-by-basis|mass-in-all")) {
                Set<Workings.FieldInput> told = new TreeSet<>(Comparator.comparing(Workings.FieldInput::address));
                collect(ledger, ask, told);
                assertEquals(List.copyOf(told), ledger.trace(ask), "seed " + seed + ", " + ask);
            }
        }
    }

    private static void collect(Ledger ledger, Ask ask, Set<Workings.FieldInput> told) {
        Workings workings = ledger.explain(ask);
        told.addAll(workings.inputs());
        workings.uses().forEach(use -> collect(ledger, use.ask(), told));
    }

    @Test
    void theTraceOfASumHoldsEveryRecord() {
        Definition definition = new RandomRecords(new Random(7)).project(90);
        Ledger ledger = new Ledger(catalogue, definition, 100);
        List<Address> masses = ledger.trace(ask(catalogue, "mass-in-all", "")).stream()
                .map(Workings.FieldInput::address)
                .filter(address -> address.field().equals("mass_g"))
                .toList();
        assertEquals(
                definition.all(RecordKinds.PART).stream()
                        .map(part -> Address.of(part.id(), "mass_g"))
                        .toList(),
                masses);
    }
}
