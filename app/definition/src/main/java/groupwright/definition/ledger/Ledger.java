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
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
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
    private final Map<Ask, AnswerNode> answers = new HashMap<>();
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
        List<Definition.Change> changes = Definition.changes(source.definition(), next);
        Set<InputNode> touched = touched(changes);
        changes.forEach(references::changed);
        changes.forEach(circles::changed);
        source = new Source(next, references, circles);
        revision++;
        for (InputNode node : touched) {
            Object value = source.read(node.read);
            if (!value.equals(node.value)) {
                node.value = value;
                markStale(node);
            }
        }
        if (answers.size() > sweepAt) {
            sweep();
            sweepAt = Math.max(SWEEP_FROM, 2 * answers.size());
        }
    }

    /** The reads that these changes may have touched. */
    Set<InputNode> touched(List<Definition.Change> changes) {
        return Changes.touched(changes, inputs, references.fields(), circles.fields());
    }

    /** Marks what reads this node as stale, and all behind it as maybe stale. */
    private static void markStale(Node changed) {
        Deque<Derived> open = new ArrayDeque<>();
        for (int i = 0; i < changed.dependentCount(); i++) {
            Derived dependent = changed.dependent(i);
            if (dependent.state == Derived.State.SETTLED) {
                open.add(dependent);
            }
            dependent.state = Derived.State.STALE;
        }
        while (!open.isEmpty()) {
            Derived node = open.remove();
            for (int i = 0; i < node.dependentCount(); i++) {
                Derived dependent = node.dependent(i);
                if (dependent.state == Derived.State.SETTLED) {
                    dependent.state = Derived.State.MAYBE_STALE;
                    open.add(dependent);
                }
            }
        }
    }

    /** Drops stale answers that nothing depends on: they were asked once and may never be again. */
    private void sweep() {
        boolean dropped = true;
        while (dropped) {
            dropped = answers.values().removeIf(node -> {
                if (node.state == Derived.State.SETTLED || node.dependentCount() > (node.band == null ? 0 : 1)) {
                    return false;
                }
                if (node.band != null && node.band.dependentCount() > 0) {
                    return false;
                }
                if (node.band != null) {
                    node.band.unwire();
                }
                node.unwire();
                return true;
            });
        }
    }

    @Override
    public Answer ask(Ask ask) {
        return settled(ask).answer();
    }

    @Override
    public Band band(Ask ask) {
        return (Band) bandNode(ask).result;
    }

    @Override
    public Workings explain(Ask ask) {
        Answer answer = ask(ask);
        Band band = band(ask);
        Recorder recorder = new Recorder(ask, this, source, key -> (Series) sumNode(key).result);
        recorder.run();
        return recorder.workings(answer, band);
    }

    @Override
    public List<Workings.FieldInput> trace(Ask ask) {
        return Trace.fields(settled(ask));
    }

    /** What the ledger would say about another definition; shares all answers the difference does not touch. */
    public Fork fork(Definition other) {
        return Fork.of(this, other);
    }

    Optional<AnswerNode> known(Ask ask) {
        return Optional.ofNullable(answers.get(ask));
    }

    Optional<SumNode> known(SumNode.Key key) {
        return Optional.ofNullable(sums.get(key));
    }

    InputTable inputs() {
        return inputs;
    }

    Source source() {
        return source;
    }

    AnswerNode settled(Ask ask) {
        AnswerNode node = answers.get(ask);
        if (node == null) {
            node = new AnswerNode(ask);
            answers.put(ask, node);
        }
        settle(node);
        return node;
    }

    private BandNode bandNode(Ask ask) {
        AnswerNode of = settled(ask);
        if (of.band == null) {
            of.band = new BandNode(of);
        }
        settle(of.band);
        return of.band;
    }

    private SumNode sumNode(SumNode.Key key) {
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
            throw new IllegalStateException("a figure asks itself: " + ((AnswerNode) node).ask);
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
            LedgerReading reading = new LedgerReading(node);
            result = reading.compute();
            computations++;
            node.setInputs(reading.nodes());
        } catch (RuntimeException | Error failed) {
            node.state = before == Derived.State.NEW ? before : Derived.State.STALE;
            throw failed;
        }
        node.state = Derived.State.SETTLED;
        if (before != Derived.State.NEW && !result.equals(node.result)) {
            for (int i = 0; i < node.dependentCount(); i++) {
                if (node.dependent(i).state == Derived.State.MAYBE_STALE) {
                    node.dependent(i).state = Derived.State.STALE;
                }
            }
        }
        node.result = result;
    }

    /** Reads for one computation and remembers the nodes it read. */
    private final class LedgerReading extends Reading {
        private final Derived node;
        private final NodeList read = new NodeList();

        LedgerReading(Derived node) {
            super(askOf(node));
            this.node = node;
        }

        Object compute() {
            if (node instanceof AnswerNode) {
                return run();
            } else if (node instanceof BandNode band) {
                read.add(band.of);
                Set<InputNode> behind = new LinkedHashSet<>();
                Band result = Bands.of(Ledger.this, band.of, this, behind);
                behind.forEach(read::add);
                return result;
            }
            return Sums.compute(((SumNode) node).key, this);
        }

        Node[] nodes() {
            return read.toArray();
        }

        @Override
        Object read(RecordId record, Field<?, ?> field) {
            InputNode input = inputs.find(record, field).orElseGet(() -> add(new Read.OfField(record, field)));
            read.add(input);
            return input.value;
        }

        @Override
        Object read(Read what) {
            InputNode input = inputs.find(what).orElseGet(() -> add(what));
            read.add(input);
            return input.value;
        }

        private InputNode add(Read what) {
            return inputs.add(what, source.read(what));
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
            AnswerNode answer = settled(other);
            read.add(answer);
            return answer.answer();
        }

        @Override
        Band bandOf(Ask other) {
            BandNode band = bandNode(other);
            read.add(band);
            return (Band) band.result;
        }

        @Override
        Series total(SumNode.Key key) {
            SumNode sum = sumNode(key);
            read.add(sum);
            return (Series) sum.result;
        }

        @Override
        List<Workings.FieldInput> traceOf(Ask other) {
            AnswerNode answer = settled(other);
            read.add(answer);
            Trace.reads(answer).forEach(read::add);
            return Trace.fields(answer);
        }

        @Override
        public Catalogue catalogue() {
            return catalogue;
        }
    }

    private Ask askOf(Derived node) {
        if (node instanceof AnswerNode answer) {
            return answer.ask;
        } else if (node instanceof BandNode band) {
            return band.of.ask;
        }
        return Sums.SUM;
    }
}
