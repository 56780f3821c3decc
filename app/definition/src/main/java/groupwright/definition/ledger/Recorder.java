package groupwright.definition.ledger;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Field;
import groupwright.definition.record.RecordId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Runs a figure once more and writes down what it reads and asks. */
final class Recorder extends Reading {
    private final View view;
    private final Source source;
    private final Function<SumNode.Key, Series> sums;
    private final Map<Read.OfField, Object> inputs = new LinkedHashMap<>();
    private final Set<Read> others = new LinkedHashSet<>();
    private final Map<Ask, Answer> uses = new LinkedHashMap<>();

    Recorder(Ask ask, View view, Source source, Function<SumNode.Key, Series> sums) {
        super(ask, new FieldCache());
        this.view = view;
        this.source = source;
        this.sums = sums;
    }

    Workings workings(Answer answer, Band band) {
        List<Workings.FieldInput> read = new ArrayList<>();
        inputs.forEach((field, value) -> {
            if (value != Source.ABSENT) {
                read.add(new Workings.FieldInput(
                        field.address(), value, field.field().unit()));
            }
        });
        List<Workings.Use> used = new ArrayList<>();
        uses.forEach((other, otherAnswer) -> used.add(new Workings.Use(other, otherAnswer)));
        return new Workings(ask(), answer, band, read, List.copyOf(others), used);
    }

    @Override
    Object read(RecordId record, Field<?, ?> field) {
        return inputs.computeIfAbsent(new Read.OfField(record, field), source::read);
    }

    @Override
    Object read(Read read) {
        others.add(read);
        return source.read(read);
    }

    @Override
    Answer answer(Ask other) {
        return uses.computeIfAbsent(other, view::ask);
    }

    @Override
    Band bandOf(Ask other) {
        return view.band(other);
    }

    @Override
    Series total(SumNode.Key key) {
        others.add(new Read.Members(key.kind()));
        return sums.apply(key);
    }

    @Override
    List<Workings.FieldInput> traceOf(Ask other) {
        return view.trace(other);
    }

    @Override
    public Catalogue catalogue() {
        return view.catalogue();
    }
}
