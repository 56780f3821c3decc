package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The ledger of answers. It computes what is asked, remembers what each answer read, and after an edit computes again only
 * what those reads touched, stopping where an answer comes out equal.
 *
 * <p>An edit pushes marks from the changed reads to all that may depend on them, O(answers that may be stale); asking pulls:
 * an answer is recomputed only if one of its own inputs turned out different. Not thread-safe: one thread owns it.
 */
public final class Ledger implements View {
    /** Nesting that fits the stack of a {@link LedgerThread}. */
    public static final int DEEPEST = 200_000;

    private static final int SWEEP_FROM = 10_000;

    private final Catalogue catalogue;
    private final AnswerTable answers = new AnswerTable();
    private final Map<SumNode.Key, SumNode> sums = new HashMap<>();
    private final InputTable inputs = new InputTable();
    private final FieldCache fields = new FieldCache();
    private final References references = new References();
    private final Circles circles = new Circles();
    private final Settling settling;
    private Source source;
    private long computations;
    private long revision;
    private int sweepAt = SWEEP_FROM;

    /**
     * A ledger about a definition.
     *
     * @param deepest how many questions may stand inside each other; {@link #DEEPEST} needs a {@link LedgerThread}
     */
    public Ledger(Catalogue catalogue, Definition definition, int deepest) {
        this.catalogue = catalogue;
        this.settling = new Settling(deepest);
        this.source = new Source(definition, references, circles);
    }

    @Override
    public Definition definition() {
        return source.definition();
    }

    @Override
    public Catalogue catalogue() {
        return catalogue;
    }

    /** How many times a figure was computed since the ledger was made; tests count the work of an edit with it. */
    public long computations() {
        return computations;
    }

    /** How many answers it holds. */
    public int size() {
        return answers.size();
    }

    /** Rises with each move; a fork is good only for the revision it was made from. */
    long revision() {
        return revision;
    }

    /** Moves to another definition: the only door for edit, undo, reload, import and merge. */
    public void moveTo(Definition next) {
        sweepWhereGrown();
        List<Definition.Change> changes = Definition.changes(source.definition(), next);
        Set<InputNode> touched = touched(changes);
        changes.forEach(references::changed);
        changes.forEach(circles::changed);
        source = new Source(next, references, circles);
        revision++;
        for (InputNode node : touched) {
            Object value = node.valueIn(source);
            if (!value.equals(node.value)) {
                node.value = value;
                markStale(node);
            }
        }
    }

    /** Before anything is marked: what is stale by now was not asked again since the move before. */
    private void sweepWhereGrown() {
        if (answers.size() > sweepAt) {
            sweep();
            sweepAt = Math.max(SWEEP_FROM, 2 * answers.size());
        }
    }

    /** Forgets stale answers that nothing depends on, and reads nothing depends on. */
    void sweep() {
        Sweep.of(answers);
        inputs.dropUnread();
    }

    /** The reads that these changes may have touched. */
    Set<InputNode> touched(List<Definition.Change> changes) {
        return Changes.touched(changes, inputs, references.fields(), circles.fields());
    }

    /** Marks what reads this node as stale, and all behind it as maybe stale. */
    private static void markStale(Node changed) {
        Deque<Derived> open = new ArrayDeque<>();
        changed.forEachDependent(dependent -> {
            if (dependent.state == Derived.State.SETTLED) {
                open.add(dependent);
            }
            dependent.state = Derived.State.STALE;
        });
        while (!open.isEmpty()) {
            open.remove().forEachDependent(dependent -> {
                if (dependent.state == Derived.State.SETTLED) {
                    dependent.state = Derived.State.MAYBE_STALE;
                    open.add(dependent);
                }
            });
        }
    }

    @Override
    public Answer ask(Ask ask) {
        return settled(ask).answer();
    }

    @Override
    public Band band(Ask ask) {
        return (Band) settledBand(ask).result;
    }

    @Override
    public List<BandPart> bandParts(Ask ask) {
        return Bands.parts(this, settled(ask));
    }

    @Override
    public Workings explain(Ask ask) {
        Answer answer = ask(ask);
        Band band = band(ask);
        Recorder recorder = new Recorder(ask, this, source, key -> (Series) settledSum(key).result);
        recorder.run();
        return recorder.workings(answer, band);
    }

    @Override
    public List<Workings.FieldInput> trace(Ask ask) {
        return Trace.fields(settled(ask));
    }

    /** What the ledger would say about another definition; shares all answers the difference does not touch. */
    @Override
    public Fork fork(Definition other) {
        return new Fork(this, other);
    }

    Optional<AnswerNode> known(Ask ask) {
        return answers.find(ask);
    }

    Optional<SumNode> known(SumNode.Key key) {
        return Optional.ofNullable(sums.get(key));
    }

    InputTable inputs() {
        return inputs;
    }

    FieldCache fields() {
        return fields;
    }

    int deepest() {
        return settling.limit();
    }

    /** A field that is read, from now on looked at with each move. */
    InputNode input(RecordId record, Field<?, ?> field) {
        Optional<FieldNode> known = inputs.find(record, field);
        return known.isPresent() ? known.get() : inputs.add(record, field, source.field(record, field));
    }

    /** Another read, from now on looked at with each move. */
    InputNode input(Read read) {
        Optional<InputNode> known = inputs.find(read);
        return known.isPresent() ? known.get() : inputs.add(read, source.read(read));
    }

    AnswerNode settled(Ask ask) {
        Optional<AnswerNode> known = answers.find(ask);
        AnswerNode node = known.isPresent() ? known.get() : new AnswerNode(ask);
        if (known.isEmpty()) {
            answers.add(node);
        }
        settle(node);
        return node;
    }

    BandNode settledBand(Ask ask) {
        AnswerNode of = settled(ask);
        if (of.band == null) {
            of.band = new BandNode(of);
        }
        settle(of.band);
        return of.band;
    }

    SumNode settledSum(SumNode.Key key) {
        SumNode node = sums.get(key);
        if (node == null) {
            node = new SumNode(key);
            sums.put(key, node);
        }
        settle(node);
        return node;
    }

    void settle(Derived node) {
        if (node.state == Derived.State.SETTLED) {
            return;
        }
        if (node.state == Derived.State.COMPUTING) {
            throw Settling.asksItself(LedgerReading.askOf(node));
        }
        settling.enter();
        try {
            if (node.state == Derived.State.MAYBE_STALE) {
                settleInputs(node);
            }
            if (node.state == Derived.State.MAYBE_STALE) {
                node.state = Derived.State.SETTLED;
            } else {
                recompute(node);
            }
        } finally {
            settling.leave();
        }
    }

    /** Settles the node's own inputs in the order they were read, until one of them makes the node stale. */
    private void settleInputs(Derived node) {
        for (Node input : node.inputs()) {
            if (input instanceof Derived derived) {
                settle(derived);
            }
            if (node.state == Derived.State.STALE) {
                return; // what it would read next may be something else now
            }
        }
    }

    private void recompute(Derived node) {
        Derived.State before = node.state;
        node.state = Derived.State.COMPUTING;
        Object result;
        try {
            LedgerReading reading = new LedgerReading(this, node);
            result = reading.compute();
            computations++;
            node.setInputs(reading.nodes());
        } catch (RuntimeException | Error failed) {
            node.state = before == Derived.State.NEW ? before : Derived.State.STALE;
            throw failed;
        }
        node.state = Derived.State.SETTLED;
        if (before != Derived.State.NEW && !result.equals(node.result)) {
            node.forEachDependent(dependent -> {
                if (dependent.state == Derived.State.MAYBE_STALE) {
                    dependent.state = Derived.State.STALE;
                }
            });
        }
        node.result = result;
    }
}
