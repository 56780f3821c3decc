package groupwright.definition.figures;

import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingSignal;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Reads several inputs and gathers what is missing, so that a reader sees all of it at once. */
final class Gathering {
    private final Inputs in;
    private final List<Missing> missing = new ArrayList<>();

    Gathering(Inputs in) {
        this.in = in;
    }

    /** What a read gives; nothing where an input of it is missing, which is kept for the end. */
    <T> Optional<T> read(Supplier<T> read) {
        try {
            return Optional.of(read.get());
        } catch (MissingSignal signal) {
            missing.add(signal.missing());
            return Optional.empty();
        }
    }

    /** The number in a field that may be empty. */
    <R extends Entry> Optional<Double> number(RecordId record, Field<R, Optional<Amount>> field, String remedy) {
        return read(() -> Gathering.number(in, record, field, remedy));
    }

    /** Ends the computation where anything was missing; all reads have given something if it comes back. */
    void end() {
        if (!missing.isEmpty()) {
            throw in.missing(Missing.all(missing));
        }
    }

    /** The number in a field that may be empty; missing with this remedy where it is. */
    static <R extends Entry> double number(
            Inputs in, RecordId record, Field<R, Optional<Amount>> field, String remedy) {
        return in.get(record, field)
                .orElseThrow(() -> in.missing(record, field, remedy))
                .value();
    }
}
