package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Answers where some reads give something else than in the ledger. What that does not touch is the ledger's own; the rest
 * is computed here and kept here.
 */
abstract class Otherwise {
    private static final Object COMPUTING = "being computed";

    private final Ledger ledger;
    private final Settling settling;
    private final FieldCache fields = new FieldCache();
    private final Map<Object, Object> own = new HashMap<>(); // by Ask or SumNode.Key

    Otherwise(Ledger ledger) {
        this.ledger = ledger;
        this.settling = new Settling(ledger.deepest());
    }

    final Ledger ledger() {
        return ledger;
    }

    /** What a field gives. */
    abstract Object value(RecordId record, Field<?, ?> field);

    /** What another read gives. */
    abstract Object value(Read read);

    /** Whether the ledger's own result holds here too; it is then used. */
    abstract boolean holds(Derived node);

    /** How well an answer is known. */
    abstract Band bandHere(Ask ask);

    /** The fields behind an answer. */
    abstract List<Workings.FieldInput> traceHere(Ask ask);

    final Answer answer(Ask ask) {
        Optional<AnswerNode> known = ledger.known(ask).filter(this::holds);
        return known.isPresent()
                ? known.get().answer()
                : (Answer) computed(ask, ask, () -> new OtherwiseReading(ask).run());
    }

    final Series branch(SumNode.Key key) {
        Optional<SumNode> known = ledger.known(key).filter(this::holds);
        return (Series)
                (known.isPresent()
                        ? known.get().result
                        : computed(key, Sums.SUM, () -> Sums.compute(key, new OtherwiseReading(Sums.SUM))));
    }

    private Object computed(Object key, Ask ask, Supplier<Object> computation) {
        Object mine = own.putIfAbsent(key, COMPUTING);
        if (mine == COMPUTING) {
            throw Settling.asksItself(ask);
        } else if (mine != null) {
            return mine;
        }
        settling.enter();
        try {
            mine = computation.get();
            own.put(key, mine);
            return mine;
        } finally {
            own.remove(key, COMPUTING); // left only where the computation failed
            settling.leave();
        }
    }

    /** Reads for one computation. */
    private final class OtherwiseReading extends Reading {
        OtherwiseReading(Ask ask) {
            super(ask, fields);
        }

        @Override
        Object read(RecordId record, Field<?, ?> field) {
            return Otherwise.this.value(record, field);
        }

        @Override
        Object read(Read read) {
            return Otherwise.this.value(read);
        }

        @Override
        Answer answer(Ask other) {
            return Otherwise.this.answer(other);
        }

        @Override
        Band bandOf(Ask other) {
            return bandHere(other);
        }

        @Override
        Series total(SumNode.Key key) {
            return branch(key);
        }

        @Override
        List<Workings.FieldInput> traceOf(Ask other) {
            return traceHere(other);
        }

        @Override
        public Catalogue catalogue() {
            return ledger.catalogue();
        }
    }
}
