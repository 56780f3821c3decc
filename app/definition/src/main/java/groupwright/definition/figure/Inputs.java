package groupwright.definition.figure;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.Item;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.Settings;
import java.util.List;
import java.util.Optional;

/**
 * All that a figure can see. There is no other way to a record, so every read is known to the ledger: a field, which
 * records of a kind there are, which records refer to one, whether one exists, and the answers of other figures.
 *
 * <p>Methods that need a value which is not there end the computation; its answer is then {@link Missing} with the
 * address and a remedy.
 */
public interface Inputs {
    /** The whole subject. */
    Subject subject();

    /** The record of a scope of the subject. */
    RecordId subject(Scope scope);

    /** The parameters, usual values filled in. */
    Settings parameters();

    /** A parameter as a whole number. */
    default int whole(String parameter) {
        return Integer.parseInt(word(parameter));
    }

    /** A parameter as a number. */
    default double number(String parameter) {
        return Double.parseDouble(word(parameter));
    }

    /** A parameter as a number; nothing where it was left out and has no usual value. */
    default Optional<Double> optionalNumber(String parameter) {
        return parameters().get(parameter).map(Double::valueOf);
    }

    /** A parameter as a word. */
    default String word(String parameter) {
        return parameters().get(parameter).orElseThrow();
    }

    /** What a field holds; missing where the record is not there. */
    <R extends Entry, T> T get(RecordId record, Field<R, T> field);

    /** What a field of an object in a list holds; nothing where the list has no such object. */
    <R extends Entry, I extends Item, T> Optional<T> item(
            RecordId record, Field<R, List<I>> list, String id, Field<I, T> field);

    /** The ids in a list of objects. */
    <R extends Entry, I extends Item> List<String> items(RecordId record, Field<R, List<I>> list);

    /** A number that must be there; missing where it is not. */
    <R extends Entry> double required(RecordId record, Field<R, Optional<Amount>> field);

    /** A number with a usual value. */
    default <R extends Entry> double amount(RecordId record, Field<R, Amount> field) {
        return get(record, field).value();
    }

    /** Whether there is such a record. */
    boolean exists(RecordId record);

    /** The ids of all records of a kind, in order. */
    List<RecordId> all(RecordKind<?> kind);

    /** The records whose field names this one, in order; the field holds an id, an optional id or a list of ids. */
    <R extends Entry> List<RecordId> referring(Field<R, ?> reference, RecordId target);

    /** The records whose field names no record at all. */
    <R extends Entry> List<RecordId> referringToNone(Field<R, ?> reference);

    /**
     * The circle into which following a field from record to record leads, from its smallest id on; empty where the way
     * ends.
     */
    <R extends Entry> List<RecordId> circle(Field<R, Optional<RecordId>> next, RecordId from);

    /** The answer of another figure. */
    Answer ask(String figure, Subject subject, Settings parameters);

    /** The answer of another figure of the same parameters' names, asked about a subject with no parameters. */
    default Answer ask(String figure, Subject subject) {
        return ask(figure, subject, Settings.NONE);
    }

    /** The number another figure gives; missing where it gives none. */
    default double value(String figure, Subject subject) {
        return value(figure, subject, Settings.NONE);
    }

    /** The number another figure gives; missing where it gives none. */
    double value(String figure, Subject subject, Settings parameters);

    /** How well another figure's answer is known. */
    Band band(String figure, Subject subject, Settings parameters);

    /**
     * Every field behind another figure's answer, one text each, {@code address = value}, in the order of addresses.
     */
    List<String> trace(String figure, Subject subject, Settings parameters);

    /** The catalogue, to find figures that records name. */
    Catalogue catalogue();

    /**
     * The sum, position by position, of the series that a figure gives for each record of a kind; a tree of sums with 16
     * branches stands behind it, so that one changed record costs as many additions as the tree has levels.
     *
     * @param figure gives a series for each record, never missing
     * @param kind the records
     * @param rest the subject beside the record
     */
    Series sum(String figure, RecordKind<?> kind, Subject rest);

    /** Ends the computation: this field must be filled first. */
    MissingSignal missing(RecordId record, Field<?, ?> field, String remedy);

    /** Ends the computation: these inputs are missing. */
    MissingSignal missing(Missing inputs);
}
