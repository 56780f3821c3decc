package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.MissingSignal;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.Optional;

/** What one run of a figure can see; every read goes through the few abstract methods at the end. */
abstract class Reading implements Inputs {
    private final Ask ask;
    private final FieldCache fields;

    /**
     * @param fields where fields of list items are kept between readings
     */
    Reading(Ask ask, FieldCache fields) {
        this.ask = ask;
        this.fields = fields;
    }

    /**
     * Runs the figure of the ask. A figure that refuses its input in words, or has no finite result, gives a missing input
     * with those words at its subject, so that an error in one figure never stops another.
     */
    final Answer run() {
        try {
            return ask.figure().computation().compute(this);
        } catch (MissingSignal signal) {
            return signal.missing();
        } catch (IllegalArgumentException | ArithmeticException refused) {
            return Missing.of(new MissingInput(Address.of(subjectOrProject()), String.valueOf(refused.getMessage())));
        }
    }

    private RecordId subjectOrProject() {
        List<RecordId> ids = ask.subject().ids();
        return ids.isEmpty() ? RecordId.PROJECT : ids.get(0);
    }

    final Ask ask() {
        return ask;
    }

    @Override
    public final Subject subject() {
        return ask.subject();
    }

    @Override
    public final RecordId subject(Scope scope) {
        return ask.subject().get(scope).orElseThrow();
    }

    @Override
    public final Settings parameters() {
        return ask.parameters();
    }

    @Override
    @SuppressWarnings("unchecked") // a field gives values of its own type
    public final <R extends Entry, T> T get(RecordId record, Field<R, T> field) {
        Object value = read(record, field);
        if (value == Source.ABSENT) {
            throw noRecord(record);
        }
        return (T) value;
    }

    private static MissingSignal noRecord(RecordId record) {
        String noun = RecordKinds.of(record).map(RecordKind::noun).orElse("record");
        return new MissingSignal(Missing.of(new MissingInput(
                Address.of(record), "there is no " + noun + " " + record + "; add it or name another")));
    }

    @Override
    public final <R extends Entry, I extends Item, T> Optional<T> item(
            RecordId record, Field<R, List<I>> list, String id, Field<I, T> field) {
        return get(record, fields.item(list, id, field));
    }

    @Override
    public final <R extends Entry, I extends Item> List<String> items(RecordId record, Field<R, List<I>> list) {
        return get(record, fields.ids(list));
    }

    @Override
    public final <R extends Entry> double required(RecordId record, Field<R, Optional<Amount>> field) {
        return get(record, field)
                .orElseThrow(() -> missing(record, field, "fill it in"))
                .value();
    }

    @Override
    public final boolean exists(RecordId record) {
        return (Boolean) read(new Read.Presence(record));
    }

    @Override
    public final List<RecordId> all(RecordKind<?> kind) {
        return ids(read(new Read.Members(kind)));
    }

    @Override
    public final <R extends Entry> List<RecordId> referring(Field<R, ?> reference, RecordId target) {
        return ids(read(new Read.Referring(reference, Optional.of(target))));
    }

    @Override
    public final <R extends Entry> List<RecordId> referringToNone(Field<R, ?> reference) {
        return ids(read(new Read.Referring(reference, Optional.empty())));
    }

    @Override
    public final <R extends Entry> List<RecordId> circle(Field<R, Optional<RecordId>> next, RecordId from) {
        return ids(read(new Read.Circle(next, from)));
    }

    @SuppressWarnings("unchecked") // these reads give lists of ids
    private static List<RecordId> ids(Object value) {
        return (List<RecordId>) value;
    }

    @Override
    public final Answer ask(String figure, Subject subject, Settings settings) {
        return answer(declared(figure, subject, settings));
    }

    @Override
    public final double value(String figure, Subject subject, Settings settings) {
        Ask other = declared(figure, subject, settings);
        Answer answer = answer(other);
        if (answer instanceof Quantity quantity) {
            return quantity.value();
        } else if (answer instanceof Missing missing) {
            throw missing(missing);
        }
        throw new IllegalStateException(ask.figure().id() + " needs a number from " + other);
    }

    @Override
    public final Band band(String figure, Subject subject, Settings settings) {
        return bandOf(declared(figure, subject, settings));
    }

    private Ask declared(String figure, Subject subject, Settings settings) {
        Figure other = catalogue()
                .find(figure)
                .orElseThrow(
                        () -> new IllegalStateException(ask.figure().id() + " asks " + figure + ": no such figure"));
        checkDeclared(other);
        return new Ask(other, subject, settings);
    }

    private void checkDeclared(Figure other) {
        if (!ask.figure().mayAsk(other)) {
            throw new IllegalStateException(
                    ask.figure().id() + " asks " + other.id() + " without naming it among what it uses");
        }
    }

    @Override
    public final List<String> trace(String figure, Subject subject, Settings settings) {
        return traceOf(declared(figure, subject, settings)).stream()
                .map(Workings.FieldInput::line)
                .toList();
    }

    @Override
    public final Series sum(String figure, RecordKind<?> kind, Subject rest) {
        Figure other = catalogue().find(figure).orElseThrow();
        checkDeclared(other);
        return total(new SumNode.Key(other, kind, rest, SumNode.TOP, 0));
    }

    @Override
    public final MissingSignal missing(RecordId record, Field<?, ?> field, String remedy) {
        return new MissingSignal(Missing.of(new MissingInput(new Address(record, field.path()), remedy)));
    }

    @Override
    public final MissingSignal missing(Missing inputs) {
        return new MissingSignal(inputs);
    }

    abstract Object read(RecordId record, Field<?, ?> field);

    abstract Object read(Read read);

    abstract Answer answer(Ask other);

    abstract Band bandOf(Ask other);

    abstract Series total(SumNode.Key key);

    abstract List<Workings.FieldInput> traceOf(Ask other);
}
