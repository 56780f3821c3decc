package groupwright.workbench.requirements;

import groupwright.definition.figure.Ask;
import groupwright.definition.history.FieldChange;
import groupwright.definition.history.RecordDiff;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** A window of one thread around one place. */
final class FakeBench implements Bench {
    private final Ledger ledger = Sample.ledger();
    private Definition before;
    private Optional<Place> place = Optional.empty();
    private Optional<Ask> selected = Optional.empty();
    final List<String> edits = new ArrayList<>();
    final List<Address> opened = new ArrayList<>();
    final Set<Ask> changedAsks = new HashSet<>();

    FakeBench(Definition definition) {
        ledger.moveTo(definition);
        before = definition;
    }

    /** Shows a place as the window does. */
    void show(Place shown) {
        place = Optional.of(shown);
        refresh();
    }

    @Override
    public Locale locale() {
        return Locale.ENGLISH;
    }

    @Override
    public Definition definition() {
        return ledger.definition();
    }

    @Override
    public Recent recent() {
        List<FieldChange> changes = RecordDiff.between(before, ledger.definition());
        return new Recent() {
            @Override
            public Optional<Object> before(Address field) {
                return changes.stream()
                        .filter(change -> change.address().equals(field))
                        .findFirst()
                        .map(change ->
                                change.before().<Object>map(value -> value).orElse(""));
            }

            @Override
            public Set<Ask> asks() {
                return Set.copyOf(changedAsks);
            }
        };
    }

    @Override
    public void edit(Optional<String> name, UnaryOperator<Definition> edit, Consumer<Invalid> refused) {
        Definition was = ledger.definition();
        Definition next;
        try {
            next = edit.apply(was);
        } catch (Invalid invalid) {
            refused.accept(invalid);
            return;
        }
        before = was;
        ledger.moveTo(next);
        edits.add(name.orElse(""));
        refresh();
    }

    @Override
    public <T> void ask(Function<View, T> question, Consumer<T> answer) {
        answer.accept(question.apply(ledger));
    }

    @Override
    public <T> void work(Work<T> work, Consumer<T> done) {
        throw new UnsupportedOperationException("this place has no long work");
    }

    @Override
    public void refresh() {
        place.ifPresent(
                shown -> shown.sheets().forEach(sheet -> sheet.read(ledger).run()));
    }

    @Override
    public void select(Ask ask) {
        selected = Optional.of(ask);
    }

    @Override
    public Optional<Ask> selected() {
        return selected;
    }

    @Override
    public void open(Address address) {
        opened.add(address);
    }

    @Override
    public void tell(Problem problem) {
        throw new AssertionError(problem.sentence());
    }

    View view() {
        return ledger;
    }
}
