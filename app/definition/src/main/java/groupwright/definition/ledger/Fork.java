package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a ledger would say about another definition. Every settled answer the difference does not touch is the ledger's
 * own; the others are computed here and forgotten with the fork.
 *
 * <p>Good until the ledger moves; asked after that, it refuses. The ledger may be asked meanwhile.
 */
public final class Fork implements View {
    private final Ledger ledger;
    private final long revision;
    private final Source source;
    private final Map<InputNode, Object> differing = new HashMap<>();
    private final Affected affected;
    private final Branch branch;
    private int looked; // how many of the ledger's reads were compared
    private Optional<Ledger> apart = Optional.empty();

    Fork(Ledger ledger, Definition other) {
        this.ledger = ledger;
        this.revision = ledger.revision();
        this.source = new Source(other, new References(), new Circles());
        ledger.touched(Definition.changes(ledger.definition(), other)).forEach(this::look);
        this.looked = ledger.inputs().size();
        this.affected = Affected.allBehind(differing.keySet(), ledger);
        this.branch = new Branch();
    }

    private void look(InputNode node) {
        Object value = node.valueIn(source);
        if (!value.equals(node.value)) {
            differing.put(node, value);
        }
    }

    /** Compares the reads the ledger made since the last look. */
    private void catchUp() {
        while (looked < ledger.inputs().size()) {
            look(ledger.inputs().get(looked++));
        }
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
        return branch.answer(ask);
    }

    private void checkRevision() {
        if (revision != ledger.revision()) {
            throw new IllegalStateException("the ledger has moved on since this fork was made; make another");
        }
    }

    /** Computed in a ledger of its own where it is not the ledger's, because a band has to try inputs of its own. */
    @Override
    public Band band(Ask ask) {
        checkRevision();
        if (ledger.known(ask).filter(branch::holds).isPresent()) {
            BandNode band = ledger.settledBand(ask);
            if (branch.holds(band)) {
                return (Band) band.result;
            }
        }
        return apart().band(ask);
    }

    @Override
    public List<BandPart> bandParts(Ask ask) {
        checkRevision();
        return apart().bandParts(ask);
    }

    /** Made of the ledger anew, so that forks of forks do not pile up. */
    @Override
    public Fork fork(Definition other) {
        checkRevision();
        return ledger.fork(other);
    }

    @Override
    public Workings explain(Ask ask) {
        Answer answer = ask(ask);
        Band band = band(ask);
        Recorder recorder = new Recorder(ask, this, source, branch::branch);
        recorder.run();
        return recorder.workings(answer, band);
    }

    @Override
    public List<Workings.FieldInput> trace(Ask ask) {
        checkRevision();
        return ledger.known(ask).filter(branch::holds).map(Trace::fields).orElseGet(() -> apart().trace(ask));
    }

    private Ledger apart() {
        if (apart.isEmpty()) {
            apart = Optional.of(new Ledger(ledger.catalogue(), source.definition(), ledger.deepest()));
        }
        return apart.get();
    }

    /** Reads from the other definition; what the ledger read and does not differ need not be read again. */
    private final class Branch extends Otherwise {
        Branch() {
            super(ledger);
        }

        @Override
        Object value(RecordId record, Field<?, ?> field) {
            Optional<FieldNode> known = ledger.inputs().find(record, field);
            return known.isPresent() ? value(known.get()) : source.field(record, field);
        }

        @Override
        Object value(Read read) {
            Optional<InputNode> known = ledger.inputs().find(read);
            return known.isPresent() ? value(known.get()) : source.read(read);
        }

        private Object value(InputNode node) {
            catchUp();
            return differing.getOrDefault(node, node.value);
        }

        @Override
        boolean holds(Derived node) {
            catchUp();
            return node.state == Derived.State.SETTLED && !affected.contains(node);
        }

        @Override
        Band bandHere(Ask ask) {
            return Fork.this.band(ask);
        }

        @Override
        List<Workings.FieldInput> traceHere(Ask ask) {
            return Fork.this.trace(ask);
        }
    }
}
