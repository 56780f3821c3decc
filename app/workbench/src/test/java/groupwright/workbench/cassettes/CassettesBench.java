package groupwright.workbench.cassettes;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.workbench.bench.Bench;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/** A bench without a window; long work waits until the test does it, on the test's thread. */
final class CassettesBench implements Bench {
    static final Catalogue CATALOGUE = Catalogue.ofServices();

    private final Deque<Runnable> work = new ArrayDeque<>();
    private final List<String> edits = new ArrayList<>();
    private final List<Address> opened = new ArrayList<>();
    private final List<Problem> told = new ArrayList<>();
    private final Ledger ledger;
    private final CassettesPlace place;

    CassettesBench(Definition definition) {
        ledger = new Ledger(CATALOGUE, definition, 500);
        place = new CassettesPlace(this, CATALOGUE);
        refresh();
    }

    CassettesView view() {
        return (CassettesView) place.component();
    }

    /** How much long work waits. */
    int waiting() {
        return work.size();
    }

    /** Does the piece of long work that waits longest. */
    void step() {
        work.removeFirst().run();
    }

    /** Does all long work, also what it asks for. */
    void workOff() {
        while (!work.isEmpty()) {
            work.removeFirst().run();
        }
    }

    List<String> edits() {
        return edits;
    }

    List<Address> opened() {
        return opened;
    }

    List<Problem> told() {
        return told;
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
        throw new UnsupportedOperationException("the place marks no change");
    }

    @Override
    public void edit(Optional<String> name, UnaryOperator<Definition> edit, Consumer<Invalid> refused) {
        try {
            ledger.moveTo(edit.apply(definition()));
            edits.add(name.orElse(""));
            refresh();
        } catch (Invalid invalid) {
            refused.accept(invalid);
        }
    }

    @Override
    public <T> void ask(Function<View, T> question, Consumer<T> answer) {
        answer.accept(question.apply(ledger));
    }

    @Override
    public <T> void work(Work<T> piece, Consumer<T> done) {
        work.addLast(() -> {
            try {
                done.accept(piece.with(Progress.NONE));
            } catch (Exception broken) {
                throw new IllegalStateException(broken);
            }
        });
    }

    @Override
    public void refresh() {
        place.sheets().forEach(sheet -> sheet.read(ledger).run());
    }

    @Override
    public void select(Ask ask) {
        throw new UnsupportedOperationException("found cassettes have no workings");
    }

    @Override
    public Optional<Ask> selected() {
        return Optional.empty();
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
