package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.List;

/** Reads for one computation of a ledger and remembers the nodes it read. */
final class LedgerReading extends Reading {
    private final Ledger ledger;
    private final Derived node;
    private final NodeList read = new NodeList();

    LedgerReading(Ledger ledger, Derived node) {
        super(askOf(node), ledger.fields());
        this.ledger = ledger;
        this.node = node;
    }

    /** The question behind a result. */
    static Ask askOf(Derived node) {
        if (node instanceof AnswerNode answer) {
            return answer.ask;
        }
        return node instanceof BandNode band ? band.of.ask : Sums.SUM;
    }

    Object compute() {
        if (node instanceof AnswerNode) {
            return run();
        } else if (node instanceof BandNode band) {
            ledger.settle(band.of);
            read.add(band.of);
            return Bands.of(ledger, band.of, this, read::add);
        }
        return Sums.compute(((SumNode) node).key, this);
    }

    Node[] nodes() {
        return read.toArray();
    }

    @Override
    Object read(RecordId record, Field<?, ?> field) {
        InputNode input = ledger.input(record, field);
        read.add(input);
        return input.value;
    }

    @Override
    Object read(Read what) {
        InputNode input = ledger.input(what);
        read.add(input);
        return input.value;
    }

    @Override
    Answer answer(Ask other) {
        AnswerNode answer = ledger.settled(other);
        read.add(answer);
        return answer.answer();
    }

    @Override
    Band bandOf(Ask other) {
        BandNode band = ledger.settledBand(other);
        read.add(band);
        return (Band) band.result;
    }

    @Override
    Series total(SumNode.Key key) {
        SumNode sum = ledger.settledSum(key);
        read.add(sum);
        return (Series) sum.result;
    }

    @Override
    List<Workings.FieldInput> traceOf(Ask other) {
        AnswerNode answer = ledger.settled(other);
        read.add(answer);
        Trace.reads(answer).forEach(read::add);
        return Trace.fields(answer);
    }

    @Override
    public Catalogue catalogue() {
        return ledger.catalogue();
    }
}
