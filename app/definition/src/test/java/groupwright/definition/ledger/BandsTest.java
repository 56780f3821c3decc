package groupwright.definition.ledger;

import static groupwright.definition.ledger.ToyFigures.number;
import static groupwright.definition.ledger.Toys.ask;
import static groupwright.definition.ledger.Toys.id;
import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Computation;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Word;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Shape;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Knowledge bands against closed forms. Propagation of independent uncertainties to first order, u² = Σ (∂f/∂x · u(x))²:
 * JCGM 100:2008 (GUM), 5.1.2, cited from memory; a central difference of a linear function is its derivative.
 */
class BandsTest {
    private static final double RELATIVE = 1e-12; // a few roundings of doubles

    /** A group with mass x = 70 ± 2 and luggage y = 10 ± 0.5, no other number with a band. */
    private static RiderGroup group(Amount mass, Amount luggage) {
        RiderGroup like = Toys.record(RecordKinds.RIDER_GROUP, 1);
        Shape<RiderGroup> shape = Shape.of(RiderGroup.class);
        RiderGroup group = like;
        for (int i = 0; i < shape.components().size(); i++) {
            Object value = shape.value(group, i);
            String name = shape.components().get(i).name();
            if (value instanceof Amount amount) {
                group = Toys.with(group, group.id(), name, Amount.of(amount.value()));
            } else if (value instanceof Optional<?> optional && optional.orElse(null) instanceof Amount amount) {
                group = Toys.with(group, group.id(), name, Optional.of(Amount.of(amount.value())));
            }
        }
        return Toys.with(group, group.id(), "riderMass_kg", Optional.of(mass), "luggage_kg", luggage);
    }

    private static final Amount X = new Amount(70, 2);
    private static final Amount Y = new Amount(10, 0.5);

    private static Band bandOf(Computation computation) {
        return bandOf(computation, X, Y);
    }

    private static Band bandOf(Computation computation, Amount x, Amount y) {
        return bandOf(ToyFigures.named("tried", Scope.RIDERS).computedBy(computation), x, y);
    }

    private static Band bandOf(Figure figure, Amount x, Amount y) {
        Catalogue catalogue = new Catalogue(List.of(figure));
        Definition definition = Toys.empty().with(group(x, y));
        return new Ledger(catalogue, definition, 100).band(ask(catalogue, "tried", "G-001"));
    }

    private static double x(Inputs in) {
        return in.required(in.subject(Scope.RIDERS), RiderGroup.RIDER_MASS);
    }

    private static double y(Inputs in) {
        return in.amount(in.subject(Scope.RIDERS), RiderGroup.LUGGAGE);
    }

    private static void assertBand(double low, double high, Band band) {
        Band.Between between = (Band.Between) band;
        assertEquals(low, between.low(), Math.abs(low) * RELATIVE);
        assertEquals(high, between.high(), Math.abs(high) * RELATIVE);
    }

    @Test
    void partsTellWhatEachInputAddsLargestFirst() {
        Figure figure = ToyFigures.named("tried", Scope.RIDERS).computedBy(in -> number(2 * x(in) - 30 * y(in)));
        Catalogue catalogue = new Catalogue(List.of(figure));
        Ledger ledger = new Ledger(catalogue, Toys.empty().with(group(X, Y)), 100);
        List<BandPart> parts = ledger.bandParts(ask(catalogue, "tried", "G-001"));
        assertEquals(
                List.of(
                        new BandPart(Address.of(id("G-001"), "luggage_kg"), Y, -30 * 0.5),
                        new BandPart(Address.of(id("G-001"), "riderMass_kg"), X, 2 * 2.0)),
                parts);
    }

    @Test
    void aSumOfTermsAddsSquares() {
        double half = Math.hypot(2 * 2, 3 * 0.5); // of 2x + 3y
        assertBand(170 - half, 170 + half, bandOf(in -> number(2 * x(in) + 3 * y(in))));
        assertBand(110 - half, 110 + half, bandOf(in -> number(2 * x(in) - 3 * y(in))));
    }

    @Test
    void aProductIsTakenToFirstOrder() {
        double half = Math.hypot(10 * 2, 70 * 0.5); // of x·y: y·u(x) and x·u(y)
        assertBand(700 - half, 700 + half, bandOf(in -> number(x(in) * y(in))));
    }

    @Test
    void aSquareHasItsCentralDifference() {
        double half = 2 * 70 * 2; // ((x+u)² − (x−u)²)/2 = 2·x·u, the curvature falls out
        assertBand(4900 - half, 4900 + half, bandOf(in -> number(x(in) * x(in))));
    }

    @Test
    void whereOneEndIsRefusedTheOtherCounts() {
        double half = Math.abs(70 * 70 - 68 * 68);
        assertBand(4900 - half, 4900 + half, bandOf(in -> {
            if (x(in) > 71) {
                throw new IllegalArgumentException("too heavy");
            }
            return number(x(in) * x(in));
        }));
    }

    @Test
    void whereNeitherEndGivesANumberTheBandIsNotStated() {
        assertEquals(Band.NOT_STATED, bandOf(in -> {
            if (x(in) != 70) {
                throw new IllegalArgumentException("only 70");
            }
            return number(x(in) + y(in));
        }));
    }

    @Test
    void numbersWithoutBandsAndNoNumbersDiffer() {
        assertEquals(Band.NOT_STATED, bandOf(in -> number(x(in) + y(in)), Amount.of(70), Amount.of(10)));
        assertEquals(
                Band.EXACT, bandOf(in -> number(in.all(RecordKinds.RIDER_GROUP).size())));
        assertBand(78, 82, bandOf(in -> number(x(in) + y(in)), X, Amount.of(10)));
    }

    @Test
    void oneInputOnTwoWaysIsOneInput() {
        Figure twice = ToyFigures.named("twice", Scope.RIDERS).computedBy(in -> number(2 * x(in)));
        Figure minus = ToyFigures.named("minus", Scope.RIDERS).computedBy(in -> number(100 - x(in)));
        Figure both = ToyFigures.named("both", Scope.RIDERS)
                .uses("twice", "minus")
                .computedBy(in -> number(in.value("twice", in.subject()) + in.value("minus", in.subject())));
        Catalogue catalogue = new Catalogue(List.of(twice, minus, both));
        Ledger ledger = new Ledger(catalogue, Toys.empty().with(group(X, Y)), 100);
        assertBand(168, 172, ledger.band(ask(catalogue, "both", "G-001"))); // x + 100, not √(4² + 2²)
    }

    @Test
    void eachNumberOfAListCounts() {
        Catalogue catalogue = ToyFigures.catalogue();
        List<Amount> spacings = List.of(new Amount(4, 0.1), new Amount(5, 0.2), Amount.of(3));
        Definition definition = Toys.empty()
                .with(Toys.record(
                        RecordKinds.CONCEPT,
                        1,
                        "cogs",
                        List.of(10, 12, 14, 16),
                        "cogSpacing_mm",
                        spacings,
                        "excludedGears",
                        List.of()));
        double half = Math.hypot(0.1 * 5 * 3, 0.2 * 4 * 3);
        assertBand(
                60 - half, 60 + half, new Ledger(catalogue, definition, 100).band(ask(catalogue, "spacings", "C-001")));
    }

    @Test
    void aSumOverRecordsAddsTheSquaresOfAll() {
        Catalogue catalogue = ToyFigures.catalogue();
        Definition definition = Toys.empty();
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 40; i++) {
            Amount mass = new Amount(10 + i, i / 10.0);
            definition = definition.with(Toys.record(
                    RecordKinds.PART, 7 * i, "mass_g", Optional.of(mass), "quantity", 2, "parent", Optional.empty()));
            sum += 2 * mass.value();
            squares += Math.pow(2 * mass.plusMinus(), 2);
        }
        double half = Math.sqrt(squares);
        Band band = new Ledger(catalogue, definition, 100).band(ask(catalogue, "mass-in-all", ""));
        assertBand(sum - half, sum + half, band);
    }

    @Test
    void aClosedFormIsTakenAsItIs() {
        Figure own = ToyFigures.named("tried", Scope.RIDERS)
                .band((quantity, in) -> new Band.Between(quantity.value() - y(in), quantity.value() + 1))
                .computedBy(in -> number(x(in)));
        assertEquals(new Band.Between(60, 71), bandOf(own, X, Y));
        Figure refuses = ToyFigures.named("tried", Scope.RIDERS)
                .band((quantity, in) -> {
                    throw in.missing(in.subject(Scope.RIDERS), RiderGroup.TYRE, "fill it in");
                })
                .computedBy(in -> number(x(in)));
        assertEquals(Band.NOT_STATED, bandOf(refuses, X, Y));
    }

    /** A number that is read at one end of the band only is no part of the trace; the band still follows it. */
    @Test
    void aBandFollowsWhatIsReadOnlyAtItsEnd() {
        Catalogue catalogue = ToyFigures.catalogue();
        Definition definition = Toys.empty()
                .with(group(X, new Amount(79, 5)))
                .with(Address.of(RecordId.PROJECT, "airDensity_kg_m3"), Optional.of(Amount.of(1)))
                .with(Address.of(id("G-001"), "beadSeat_mm"), Optional.of(Amount.of(600)));
        Ask branching = ask(catalogue, "branching", "G-001");
        Ledger ledger = new Ledger(catalogue, definition, 100);
        double half = ((84 + 600) - 74) / 2.0;
        assertBand(79 - half, 79 + half, ledger.band(branching));
        long before = ledger.computations();
        ledger.moveTo(definition.with(Address.of(id("G-001"), "beadSeat_mm"), Optional.of(Amount.of(400))));
        double smaller = ((84 + 400) - 74) / 2.0;
        assertBand(79 - smaller, 79 + smaller, ledger.band(branching));
        assertEquals(before + 1, ledger.computations(), "the band, not the answer");
        Fork fork = ledger.fork(definition);
        assertBand(79 - half, 79 + half, fork.band(branching));
    }

    @Test
    void anAnswerWithoutNumberHasNoBand() {
        assertEquals(Band.NOT_STATED, bandOf(in -> {
            throw new IllegalArgumentException("always");
        }));
        assertEquals(Band.NOT_STATED, bandOf(in -> new Word("meets", "for " + Settings.NONE)));
        assertEquals(Quantity.of(0, number(0).unit()), number(-0.0));
    }
}
