package groupwright.benchmarks;

import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.record.Definition;

/**
 * Bytes of heap for each answer in a ledger, with its question, its value and its edges: what is in use after collecting
 * garbage, with the answers less without them.
 */
final class LedgerHeap {
    private LedgerHeap() {}

    static double bytesPerAnswer() {
        LargeCatalogue catalogue = new LargeCatalogue();
        Definition definition = LargeProject.make();
        Ledger ledger = new Ledger(catalogue.catalogue(), definition, 100);
        long before = used();
        for (Ask[] ofOne : catalogue.verdicts(definition)) {
            for (Ask ask : ofOne) {
                ledger.ask(ask);
            }
        }
        long after = used();
        return (double) (after - before) / ledger.size();
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            System.gc();
            least = Math.min(least, runtime.totalMemory() - runtime.freeMemory());
        }
        return least;
    }
}
