package groupwright.workbench.concepts;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
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
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** A bench with a ledger of its own and no window: edits, questions and refreshing happen at once. */
final class LedgerBench implements Bench {
    private static final Catalogue CATALOGUE = Catalogue.ofServices();

    private final Ledger ledger;
    private final Locale locale;
    private final List<Optional<String>> edits = new ArrayList<>();
    private final List<Problem> told = new ArrayList<>();
    private final List<Address> opened = new ArrayList<>();
    private final Set<Ask> changed = new LinkedHashSet<>();
    private Optional<Ask> selected = Optional.empty();
    private Optional<Place> place = Optional.empty();
    private Definition before;

    LedgerBench(Definition definition, Locale locale) {
        this.ledger = new Ledger(CATALOGUE, definition, 500);
        this.locale = locale;
        this.before = definition;
    }

    /** A place in sight of this bench. */
    ConceptsPlace place() {
        ConceptsPlace made = new ConceptsPlace(this, CATALOGUE);
        place = Optional.of(made);
        refresh();
        return made;
    }

    ConceptsSheet sheet() {
        return new ConceptsReading(ledger, locale).of(Optional.empty(), Shown.WORKED_ON);
    }

    View ledger() {
        return ledger;
    }

    List<Optional<String>> edits() {
        return edits;
    }

    List<Problem> told() {
        return told;
    }

    List<Address> opened() {
        return opened;
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
        return new Recent() {
            @Override
            public Optional<Object> before(Address field) {
                return RecordDiff.between(before, definition()).stream()
                        .filter(change -> change.address().equals(field))
                        .findFirst()
                        .flatMap(change -> change.before());
            }

            @Override
            public Set<Ask> asks() {
                return changed;
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
        if (next == definition()) {
            return;
        }
        Map<Ask, Answer> was = new LinkedHashMap<>();
        new Assessment(ledger).watched().forEach(ask -> was.put(ask, ledger.ask(ask)));
        before = definition();
        ledger.moveTo(next);
        changed.clear();
        was.forEach((ask, answer) -> {
            if (!ledger.ask(ask).equals(answer)) {
                changed.add(ask);
            }
        });
        edits.add(name);
        refresh();
    }

    @Override
    public <T> void ask(Function<View, T> question, Consumer<T> answer) {
        answer.accept(question.apply(ledger));
    }

    @Override
    public <T> void work(Work<T> work, Consumer<T> done) {
        throw new UnsupportedOperationException("nothing here takes long");
    }

    @Override
    public void refresh() {
        place.ifPresent(
                seen -> seen.sheets().forEach(sheet -> sheet.read(ledger).run()));
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
        told.add(problem);
    }
}
