package groupwright.workbench.bench;

import groupwright.definition.figure.Ask;
import groupwright.definition.history.FieldChange;
import groupwright.definition.history.RecordDiff;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** A bench without window and ledger: edits happen at once and are written down. */
public final class FakeBench implements Bench {
    private final Locale locale;
    private final List<Optional<String>> edits = new ArrayList<>();
    private final List<Problem> told = new ArrayList<>();
    private final List<Runnable> steps = new ArrayList<>();
    private Definition definition;
    private Definition before;

    public FakeBench(Locale locale, Definition definition) {
        this.locale = locale;
        this.definition = definition;
        this.before = definition;
    }

    /** Runs after each edit that changed something. */
    public void afterEachStep(Runnable step) {
        steps.add(step);
    }

    /** Names of the edits that changed something. */
    public List<Optional<String>> edits() {
        return edits;
    }

    /** Problems told. */
    public List<Problem> told() {
        return told;
    }

    @Override
    public Locale locale() {
        return locale;
    }

    @Override
    public Definition definition() {
        return definition;
    }

    @Override
    public Recent recent() {
        List<FieldChange> changes = RecordDiff.between(before, definition);
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
            next = edit.apply(definition);
        } catch (Invalid invalid) {
            refused.accept(invalid);
            return;
        }
        if (next != definition) {
            before = definition;
            definition = next;
            edits.add(name);
            steps.forEach(Runnable::run);
        }
    }

    @Override
    public <T> void ask(Function<View, T> question, Consumer<T> answer) {
        throw new UnsupportedOperationException("no ledger here");
    }

    @Override
    public <T> void work(Work<T> work, Consumer<T> done) {
        throw new UnsupportedOperationException("no ledger here");
    }

    @Override
    public void refresh() {
        steps.forEach(Runnable::run);
    }

    @Override
    public void select(Ask ask) {
        throw new UnsupportedOperationException("no Workings here");
    }

    @Override
    public Optional<Ask> selected() {
        return Optional.empty();
    }

    @Override
    public void open(Address address) {
        throw new UnsupportedOperationException("no places here");
    }

    @Override
    public void tell(Problem problem) {
        told.add(problem);
    }
}
