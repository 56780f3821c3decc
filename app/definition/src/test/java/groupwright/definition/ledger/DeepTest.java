package groupwright.definition.ledger;

import static groupwright.definition.ledger.ToyFigures.number;
import static groupwright.definition.ledger.Toys.ask;
import static groupwright.definition.ledger.Toys.id;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Parts within parts within parts: questions that stand inside each other. */
class DeepTest {
    private static final int LENGTH = 100_000;
    private final Catalogue catalogue = ToyFigures.catalogue();

    private Ask depth(int part) {
        return ask(catalogue, "depth", RecordId.of("P", part).text());
    }

    private static Definition cut(Definition chain, String at) {
        return chain.with(Address.of(id(at), "parent"), Optional.empty());
    }

    @Test
    void aHundredThousandPartsWithinPartsAreAnswered() throws InterruptedException {
        Definition chain = Toys.chain(LENGTH);
        try (LedgerThread thread = new LedgerThread()) {
            thread.call(() -> {
                Ledger ledger = new Ledger(catalogue, chain, Ledger.DEEPEST);
                assertEquals(number(LENGTH - 1), ledger.ask(depth(LENGTH - 1)));
                assertEquals(LENGTH, ledger.trace(depth(LENGTH - 1)).size());
                ledger.moveTo(cut(chain, "P-001"));
                assertEquals(number(LENGTH - 2), ledger.ask(depth(LENGTH - 1)));
                Fork fork = ledger.fork(cut(chain, "P-003"));
                assertEquals(number(LENGTH - 4), fork.ask(depth(LENGTH - 1)));
                assertEquals(number(LENGTH - 2), ledger.ask(depth(LENGTH - 1)));
                return null;
            });
        }
    }

    /** Nothing is asked again after an edit at the root: all are dropped, each with a look at its few neighbours. */
    @Test
    void aLongChainOfStaleAnswersIsDropped() throws InterruptedException {
        Definition chain = Toys.chain(LENGTH);
        try (LedgerThread thread = new LedgerThread()) {
            thread.call(() -> {
                Ledger ledger = new Ledger(catalogue, chain, Ledger.DEEPEST);
                ledger.ask(depth(LENGTH - 1));
                ledger.moveTo(cut(chain, "P-001"));
                ledger.sweep();
                assertEquals(1, ledger.size()); // the one above the cut is still settled
                assertEquals(number(LENGTH - 2), ledger.ask(depth(LENGTH - 1)));
                return null;
            });
        }
    }

    @Test
    void tooDeepIsSaidInOneSentenceAndTheLedgerStaysUsable() {
        Ledger ledger = new Ledger(catalogue, Toys.chain(1000), 100);
        RuntimeException tooDeep = assertThrows(RuntimeException.class, () -> ledger.ask(depth(999)));
        assertEquals(
                "questions stand inside each other more than 100 levels deep; records nest too deeply, for example parts"
                        + " within parts",
                tooDeep.getMessage());
        assertEquals(number(99), ledger.ask(depth(99)));
        for (int part = 0; part < 1000; part++) { // step by step none of them is deep
            assertEquals(number(part), ledger.ask(depth(part)));
        }
        ledger.moveTo(cut(ledger.definition(), "P-001"));
        assertThrows(RuntimeException.class, () -> ledger.ask(depth(999)));
        for (int part : List.of(1, 100, 199, 298)) {
            assertEquals(number(part - 1), ledger.ask(depth(part)));
        }
    }

    @Test
    void aForkKnowsTheSameLimit() {
        Ledger ledger = new Ledger(catalogue, Toys.chain(50), 100);
        Fork fork = ledger.fork(Toys.chain(1000));
        assertThrows(Settling.TooDeep.class, () -> fork.ask(depth(999)));
        assertThrows(Settling.TooDeep.class, () -> fork.band(depth(999)));
        assertEquals(number(60), fork.ask(depth(60)));
    }

    /** What the ledger cannot answer about its own definition does not keep a fork from answering about another. */
    @Test
    void aForkAnswersWhereTheLedgerCannot() {
        Definition chain = Toys.chain(1000);
        Ledger ledger = new Ledger(catalogue, chain, 100);
        assertThrows(Settling.TooDeep.class, () -> ledger.ask(depth(999)));
        assertEquals(number(9), ledger.fork(cut(chain, "P-990")).ask(depth(999)));
    }
}
