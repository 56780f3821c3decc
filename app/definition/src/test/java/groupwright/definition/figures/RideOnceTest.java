package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.figure.ExampleProject;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A ride is predicted once for all figures taken from it, and again only where its own inputs change. */
class RideOnceTest {
    private static final List<String> FIGURES = List.of(
            "average-speed",
            "cadence-comfort",
            "shift-actions",
            "cogs-shifted",
            "front-shifts",
            "walking-time",
            "grinding-time",
            "ride-work",
            "gear-use",
            "cadence-distribution");

    private final Asking asking = new Asking(ExampleProject.definition());

    /** How many figures are computed until all answers stand. */
    private long asked(String parameters) {
        long before = asking.ledger.computations();
        FIGURES.forEach(figure -> asking.answer(figure + " C-901 G-901" + parameters));
        return asking.ledger.computations() - before;
    }

    private long afterEdit(String address, Object value) {
        Definition now = asking.ledger.definition();
        asking.ledger.moveTo(now.with(Address.parse(address).orElseThrow(), Optional.of(value)));
        return asked("");
    }

    @Test
    void tenFiguresShareOnePrediction() {
        assertEquals(11, asked(""), "ten figures and the ride itself");
        assertEquals(0, asked(""), "all is known");
        assertEquals(11, asked(" ride-length=10"), "another ride");
        assertEquals(0, asked(" ride-length=40 headwind=0"), "the usual values are the same question");
        assertEquals(1, before(() -> asking.answer("gear-use C-901 G-901 by=work")), "the ride is known");
    }

    private long before(Runnable question) {
        long computed = asking.ledger.computations();
        question.run();
        return asking.ledger.computations() - computed;
    }

    @Test
    void onlyEditsOfItsOwnInputsPredictAgain() {
        asked("");
        assertEquals(0, afterEdit("K-901.wording", "Another wording"));
        assertEquals(0, afterEdit("C-901.title", "Another title"));
        assertEquals(0, afterEdit("P-902.mass_g", Amount.of(99)));
        assertEquals(0, afterEdit("G-901.climbs.wall.grade_pct", Amount.of(11)));
        assertEquals(11, afterEdit("G-901.terrain.up.share_pct", Amount.of(41)));
    }

    /** A stated band changes the field but not its value: the ride is predicted anew, comes out equal, and that is all. */
    @Test
    void anEqualRideStopsThere() {
        asked("");
        assertEquals(1, afterEdit("project.airDensity_kg_m3", new Amount(1.2, 0.1)));
    }

    /** A band would predict twice for each banded input; none is stated, and asking for it costs the rule alone. */
    @Test
    void bandsPredictNothing() {
        asked("");
        assertEquals(8, before(() -> FIGURES.subList(0, 8).forEach(figure -> asking.band(figure + " C-901 G-901"))));
    }
}
