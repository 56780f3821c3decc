package groupwright.definition.ledger;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * An answer with one input moved to an end of its band; tells which results and reads of the ledger it went by, because
 * figures may read other things there than in the middle. Bands and traces that figures ask for
 * stand still meanwhile.
 */
final class Trial extends Otherwise {
    private final InputNode moved;
    private final Object to;
    private final Affected affected;
    private final Consumer<Node> used;

    Trial(Ledger ledger, InputNode moved, Object to, Consumer<Node> used) {
        super(ledger);
        this.moved = moved;
        this.to = to;
        this.affected = Affected.between(Set.of(moved), ledger);
        this.used = used;
    }

    @Override
    Object value(RecordId record, Field<?, ?> field) {
        return value(ledger().input(record, field));
    }

    @Override
    Object value(Read read) {
        return value(ledger().input(read));
    }

    private Object value(InputNode node) {
        used.accept(node);
        return node == moved ? to : node.value;
    }

    @Override
    boolean holds(Derived node) {
        boolean holds = node.state == Derived.State.SETTLED && !affected.contains(node);
        if (holds) {
            used.accept(node);
        }
        return holds;
    }

    @Override
    Band bandHere(Ask ask) {
        BandNode band = ledger().settledBand(ask);
        used.accept(band);
        return (Band) band.result;
    }

    @Override
    List<Workings.FieldInput> traceHere(Ask ask) {
        AnswerNode answer = ledger().settled(ask);
        used.accept(answer);
        Trace.reads(answer).forEach(used);
        return Trace.fields(answer);
    }
}
