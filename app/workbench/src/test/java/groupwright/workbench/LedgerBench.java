package groupwright.workbench;

import groupwright.definition.figure.Ask;
import groupwright.definition.history.FieldChange;
import groupwright.definition.history.RecordDiff;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** A bench with a ledger and without a window: all happens at once, on one thread, and is written down. */
public final class LedgerBench implements Bench {
    public final List<Optional<String>> edits = new ArrayList<>();
    public final List<Problem> told = new ArrayList<>();
    public final List<Address> opened = new ArrayList<>();
    private final Locale locale;
    private final Ledger ledger;
    private Optional<Place> place = Optional.empty();
    private Optional<Ask> selected = Optional.empty();
    private Definition before;

    public LedgerBench(Locale locale, Definition definition) {
        this.locale = locale;
        this.ledger = new Ledger(groupwright.definition.figure.Catalogue.ofServices(), definition, 500);
        this.before = definition;
    }

    public Ledger ledger() {
        return ledger;
    }

    /** The place in sight; shows it. */
    public <P extends Place> P show(P shown) {
        place = Optional.of(shown);
        refresh();
        return shown;
    }

    @Override
    public Locale locale() {
        return locale;
    }

    @Override
    public Definition definition() {
        return ledger.definition();
    }

    @Override
    public Recent recent() {
        List<FieldChange> changes = RecordDiff.between(before, definition());
        return new Recent() {
            @Override
            public Optional<Object> before(Address field) {
                return changes.stream()
                        .filter(change -> change.address().equals(field))
                        .findFirst()
                        .flatMap(FieldChange::before);
            }

            @Override
            public Set<Ask> asks() {
                return Set.of();
            }
        };
    }

    @Override
    public void edit(Optional<String> name, UnaryOperator<Definition> edit, Consumer<Invalid> refused) {
        Definition next;
        try {
            next = edit.apply(definition());
        } catch (Invalid invalid) {
            refused.accept(invalid);
            return;
        }
        if (next != definition()) {
            before = definition();
            ledger.moveTo(next);
            edits.add(name);
            refresh();
        }
    }

    @Override
    public <T> void ask(Function<View, T> question, Consumer<T> answer) {
        answer.accept(question.apply(ledger));
    }

    @Override
    public <T> void work(Work<T> work, Consumer<T> done) {
        throw new UnsupportedOperationException("no long work here");
    }

    @Override
    public void refresh() {
        place.ifPresent(one -> one.sheets().forEach(sheet -> sheet.read(ledger).run()));
    }

    @Override
    public void select(Ask ask) {
        selected = Optional.of(ask);
        refresh();
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
        told.add(problem);
    }
}
