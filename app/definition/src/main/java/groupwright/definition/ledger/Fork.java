package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a ledger would say if some reads gave something else: another definition, or one input moved within its band. Every
 * answer the difference does not touch is the ledger's own; the others are computed here and forgotten with the fork.
 *
 * <p>Good until the ledger moves; asked after that, it refuses.
 */
public final class Fork implements View {
    private final Ledger ledger;
    private final long revision;
    private final Source source;
    private final Map<InputNode, Object> otherwise;
    private final Affected affected;
    private final FieldCache fields = new FieldCache();
    private final Map<Object, Object> own = new HashMap<>(); // by Ask or SumNode.Key
    private Optional<Ledger> apart = Optional.empty();

    private Fork(Ledger ledger, Source source, Map<InputNode, Object> otherwise, Affected affected) {
        this.ledger = ledger;
        this.revision = ledger.revision();
        this.source = source;
        this.otherwise = otherwise;
        this.affected = affected;
    }

    static Fork of(Ledger ledger, Definition other) {
        Source source = new Source(other, new References(), new Circles());
        Map<InputNode, Object> otherwise = new HashMap<>();
        List<Definition.Change> changes = Definition.changes(ledger.definition(), other);
        for (InputNode node : ledger.touched(changes)) {
            Object value = source.read(node.read);
            if (!value.equals(node.value)) {
                otherwise.put(node, value);
            }
        }
        return new Fork(ledger, source, otherwise, Affected.allBehind(otherwise.keySet(), ledger));
    }

    /** A fork to ask for settled answers with some of the reads behind them changed. */
    static Fork trial(Ledger ledger, Map<InputNode, Object> otherwise) {
        return new Fork(ledger, ledger.source(), otherwise, Affected.between(otherwise.keySet()));
    }

    @Override
    public Definition definition() {
        return source.definition();
    }

    @Override
    public Catalogue catalogue() {
        return ledger.catalogue();
    }

    @Override
    public Answer ask(Ask ask) {
        checkRevision();
        Optional<AnswerNode> known = ledger.known(ask);
        if (known.isPresent()) {
            ledger.settle(known.get());
            if (!affected.contains(known.get())) {
                return known.get().answer();
            }
        }
        Object mine = own.get(ask);
        if (mine == null) {
            mine = new ForkReading(ask).run();
            own.put(ask, mine);
        }
        return (Answer) mine;
    }

    private void checkRevision() {
        if (revision != ledger.revision()) {
            throw new IllegalStateException("the ledger has moved on since this fork was made; make another");
        }
    }

    /** Computed in a ledger of its own the first time it is asked, because a band has to try inputs of its own. */
    @Override
    public Band band(Ask ask) {
        checkRevision();
        Optional<AnswerNode> known = ledger.known(ask);
        if (known.isPresent()) {
            ledger.settle(known.get());
            if (!affected.contains(known.get())) {
                return ledger.band(ask);
            }
        }
        return apart().band(ask);
    }

    @Override
    public Workings explain(Ask ask) {
        Answer answer = ask(ask);
        Band band = band(ask);
        Recorder recorder = new Recorder(ask, this, source, this::branch);
        recorder.run();
        return recorder.workings(answer, band);
    }

    @Override
    public List<Workings.FieldInput> trace(Ask ask) {
        return apart().trace(ask);
    }

    private Ledger apart() {
        if (apart.isEmpty()) {
            apart = Optional.of(new Ledger(ledger.catalogue(), source.definition(), Ledger.DEEPEST));
        }
        return apart.get();
    }

    private Series branch(SumNode.Key key) {
        Optional<SumNode> known = ledger.known(key);
        if (known.isPresent()) {
            ledger.settle(known.get());
            if (!affected.contains(known.get())) {
                return (Series) known.get().result;
            }
        }
        Object mine = own.get(key);
        if (mine == null) {
            mine = Sums.compute(key, new ForkReading(Sums.SUM));
            own.put(key, mine);
        }
        return (Series) mine;
    }

    /** Reads for one computation inside the fork. */
    private final class ForkReading extends Reading {
        ForkReading(Ask ask) {
            super(ask);
        }

        @Override
        Object read(RecordId record, Field<?, ?> field) {
            Optional<InputNode> known = ledger.inputs().find(record, field);
            return known.isPresent() ? value(known.get()) : source.read(new Read.OfField(record, field));
        }

        @Override
        Object read(Read read) {
            Optional<InputNode> known = ledger.inputs().find(read);
            return known.isPresent() ? value(known.get()) : source.read(read);
        }

        private Object value(InputNode node) {
            Object other = otherwise.get(node);
            return other == null ? node.value : other;
        }

        @Override
        <R extends Entry, I extends Item, T> Field<R, Optional<T>> itemField(
                Field<R, List<I>> list, String id, Field<I, T> field) {
            return fields.item(list, id, field);
        }

        @Override
        <R extends Entry, I extends Item> Field<R, List<String>> idsField(Field<R, List<I>> list) {
            return fields.ids(list);
        }

        @Override
        Answer answer(Ask other) {
            return Fork.this.ask(other);
        }

        @Override
        Band bandOf(Ask other) {
            return Fork.this.band(other);
        }

        @Override
        Series total(SumNode.Key key) {
            return branch(key);
        }

        @Override
        List<Workings.FieldInput> traceOf(Ask other) {
            return Fork.this.trace(other);
        }

        @Override
        public Catalogue catalogue() {
            return ledger.catalogue();
        }
    }
}
