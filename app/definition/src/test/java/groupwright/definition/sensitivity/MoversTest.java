package groupwright.definition.sensitivity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoversTest {
    private static final Definition SAMPLE = ProjectFiles.read(Path.of("..", "..", "samples", "tarnbeck"))
            .definition()
            .orElseThrow();
    private static final Catalogue CATALOGUE = Catalogue.ofServices();

    private final Ledger ledger = new Ledger(CATALOGUE, SAMPLE, 1000);

    private static Ask ask(String text) {
        return FigureText.parse(text).resolve(CATALOGUE, Optional.empty());
    }

    private Movers movers(String text, double pct) {
        return Movers.of(ledger, ask(text), new StatedChange(pct));
    }

    @Test
    void aToothAtTheEndsMovesTheRangeAndNothingElseDoes() {
        Movers movers = movers("gear-range C-002", 1);
        assertEquals(2, movers.moving().size());
        Effect smallest = movers.moving().get(0);
        assertEquals(Address.parse("C-002.cogs").orElseThrow(), smallest.address());
        assertEquals(10, smallest.from());
        assertEquals(11, smallest.to());
        assertEquals(100.0 * 45 / 11 - 450, smallest.difference().orElseThrow(), 1e-9);
        assertEquals(100.0 * 46 / 10 - 450, movers.moving().get(1).difference().orElseThrow(), 1e-9);
        assertEquals(10, movers.unmoved(), "nine cogs between and the ring");
    }

    /** The power of a climb may be empty, and the climb may not be there: it is a number all the same. */
    @Test
    void theOwnPowerOfAClimbIsTried() {
        Address power = Address.parse("G-002.climbs.steep-12.power_W").orElseThrow();
        Effect effect = movers("climb-speed C-002 G-002 climb=steep-12", 1).moving().stream()
                .filter(moving -> moving.address().equals(power))
                .findFirst()
                .orElseThrow();
        assertEquals(190, effect.from());
        assertEquals(191.9, effect.to(), 1e-9);
        assertTrue(effect.difference().orElseThrow() > 0);
    }

    @Test
    void aCountThatCannotGrowIsTriedSmaller() {
        Definition dense = SAMPLE.with(Address.parse("C-002.cogs").orElseThrow(), Optional.of(List.of(10, 11, 12, 20)));
        Movers movers = Movers.of(new Ledger(CATALOGUE, dense, 1000), ask("gear-range C-002"), StatedChange.USUAL);
        Effect smallest = movers.moving().get(0);
        assertEquals(9, smallest.to(), "eleven is taken");
        assertEquals(1, movers.fixed(), "11 between 10 and 12");
    }

    /** The independent route: a fresh ledger about the project with the one field changed by hand. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "climb-cadence C-002 G-002 climb=steep-12",
                "spin-out-speed C-002 G-001",
                "held-speed C-001 G-001",
                "mass-predicted C-002",
                "unit-cost C-003"
            })
    void everyEffectIsWhatAFreshLedgerSays(String figure) {
        Movers movers = movers(figure, 2);
        assertTrue(movers.moving().size() > 2, figure + " has " + movers.moving());
        double last = Double.POSITIVE_INFINITY;
        for (Effect effect : movers.moving()) {
            assertTrue(effect.weight() <= last, "most first");
            last = effect.weight();
            if (SAMPLE.value(effect.address()).orElseThrow() instanceof Amount amount) {
                assertEquals(amount.value() * 1.02, effect.to(), 1e-9);
                Definition changed =
                        SAMPLE.with(effect.address(), Optional.of(amount.withValue(amount.value() * 1.02)));
                Quantity fresh = (Quantity) new Ledger(CATALOGUE, changed, 1000).ask(ask(figure));
                assertEquals(fresh, effect.after(), effect.address().toString());
            }
        }
    }

    @Test
    void onASteepClimbPowerLiftsTheCadenceAndGradeAndWeightLowerIt() {
        Movers movers = movers("climb-cadence C-002 G-002 climb=steep-12", 1);
        assertTrue(difference(movers, "G-002.climbs.steep-12.power_W") > 0);
        assertTrue(difference(movers, "G-002.climbs.steep-12.grade_pct") < 0);
        assertTrue(difference(movers, "G-002.riderMass_kg") < 0);
    }

    private static double difference(Movers movers, String address) {
        return movers.moving().stream()
                .filter(effect -> effect.address().toString().equals(address))
                .findFirst()
                .orElseThrow(() -> new AssertionError(address + " is not in " + movers.moving()))
                .difference()
                .orElseThrow();
    }

    @Test
    void anAnswerThatIsNoNumberHasNoMovers() {
        assertEquals(List.of(), movers("steps C-002", 1).moving());
        assertEquals(List.of(), movers("verdict C-002 R-007", 1).moving());
    }

    @Test
    void aChangeOfNothingIsRefused() {
        assertThrows(Invalid.class, () -> new StatedChange(0));
        assertThrows(Invalid.class, () -> new StatedChange(Double.NaN));
        assertThrows(Invalid.class, () -> new StatedChange(101));
    }
}
