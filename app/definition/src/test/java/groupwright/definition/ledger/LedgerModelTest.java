package groupwright.definition.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Missing;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RandomEdits;
import groupwright.definition.record.RandomRecords;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The ledger against the simplest thing it could be: a new one for every question. */
class LedgerModelTest {
    private static final int DEEPEST = 500;
    private final Catalogue catalogue = ToyFigures.catalogue();

    private static final class Run {
        final Random random;
        final RandomEdits edits;
        final RandomRecords records;

        Run(long seed) {
            random = new Random(seed);
            records = new RandomRecords(random);
            edits = new RandomEdits(records, ToyFigures.KINDS);
        }

        Definition edited(Definition before) {
            return edits.edits(before, random.nextInt(10) == 0 ? 40 : 1 + random.nextInt(3));
        }

        /** A few of these questions, or now and then all. */
        List<Ask> some(List<Ask> asks) {
            return random.nextInt(30) == 0
                    ? asks
                    : random.ints(25, 0, asks.size()).mapToObj(asks::get).toList();
        }
    }

    private void assertSame(View expected, View actual, Ask ask, String where) {
        assertEquals(expected.ask(ask), actual.ask(ask), () -> where + ", " + ask);
        assertEquals(expected.band(ask), actual.band(ask), () -> where + ", band of " + ask);
        assertEquals(expected.trace(ask), actual.trace(ask), () -> where + ", trace of " + ask);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void afterEveryEditAllIsAsInANewLedger(long seed) {
        Run run = new Run(seed);
        Definition definition = run.records.project(90);
        Ledger ledger = new Ledger(catalogue, definition, DEEPEST);
        for (int step = 0; step < 350; step++) {
            definition = run.edited(definition);
            ledger.moveTo(definition);
            String where = "seed " + seed + ", step " + step;
            Ledger fresh = new Ledger(catalogue, definition, DEEPEST);
            for (Ask ask : run.some(ToyFigures.asks(catalogue, definition))) {
                if (run.random.nextInt(4) > 0) { // the others stay stale, and wait for a later edit
                    assertSame(fresh, ledger, ask, where);
                }
            }
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {11, 12, 13, 14})
    void aForkAnswersAsANewLedgerAboutTheOtherDefinitionAndLeavesTheLedgerAlone(long seed) {
        Run run = new Run(seed);
        Definition definition = run.records.project(90);
        Ledger ledger = new Ledger(catalogue, definition, DEEPEST);
        for (int step = 0; step < 150; step++) {
            Definition other = run.edited(definition);
            List<Ask> asks = ToyFigures.asks(catalogue, run.random.nextBoolean() ? definition : other);
            run.some(asks).forEach(ledger::ask);
            Fork fork = ledger.fork(other);
            Ledger freshHere = new Ledger(catalogue, definition, DEEPEST);
            Ledger freshThere = new Ledger(catalogue, other, DEEPEST);
            String where = "seed " + seed + ", step " + step;
            for (Ask ask : run.some(asks)) { // the ledger is asked in between, and reads what it had not read before
                if (run.random.nextBoolean()) {
                    assertSame(freshHere, ledger, ask, where + ", ledger");
                }
                assertSame(freshThere, fork, ask, where + ", fork");
                assertEquals(freshThere.explain(ask), fork.explain(ask), where);
            }
            definition = run.random.nextBoolean() ? other : run.edited(definition);
            ledger.moveTo(definition);
        }
    }

    /** The tests above say little if the random projects never lead where it gets difficult. */
    @ParameterizedTest
    @ValueSource(longs = 21)
    void theRandomProjectsLeadEverywhere(long seed) {
        Run run = new Run(seed);
        int bands = 0;
        int exact = 0;
        int notStated = 0;
        int missing = 0;
        int circles = 0;
        for (int i = 0; i < 10; i++) {
            Definition definition = run.records.project(90);
            Ledger ledger = new Ledger(catalogue, definition, DEEPEST);
            for (Ask ask : ToyFigures.asks(catalogue, definition)) {
                Answer answer = ledger.ask(ask);
                Band band = ledger.band(ask);
                bands += band instanceof Band.Between ? 1 : 0;
                exact += band.equals(Band.EXACT) ? 1 : 0;
                notStated += band.equals(Band.NOT_STATED) ? 1 : 0;
                missing += answer instanceof Missing ? 1 : 0;
                circles += answer.toString().contains("break the circle") ? 1 : 0;
            }
        }
        assertTrue(bands > 300 && exact > 300 && notStated > 300 && missing > 300, "too few of a sort");
        assertTrue(circles > 5, "only " + circles + " circles");
    }
}
