package groupwright.workbench.claims;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.form.Arrangement;
import groupwright.workbench.form.NewRecordForm;
import groupwright.workbench.form.RecordForm;
import groupwright.workbench.look.Words;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;

/** The place of claims. */
public final class ClaimsPlace implements Place {
    private final Bench bench;
    private final Catalogue catalogue;
    private final Words words;
    private final Decisions decisions;
    private final ClaimsView view;
    private final DetailPanel detail;
    private Optional<ClaimForm> form = Optional.empty();
    private Optional<RecordForm> editing = Optional.empty();
    private Optional<NewRecordForm> adding = Optional.empty();
    private volatile Optional<RecordId> selected = Optional.empty(); // read on the ledger's thread

    /**
     * @param clock says which day it is when somebody signs
     */
    public ClaimsPlace(Bench bench, Catalogue catalogue, Clock clock) {
        this.bench = bench;
        this.catalogue = catalogue;
        this.words = Words.of(ClaimsPlace.class, bench.locale());
        this.decisions = new Decisions(bench, words, clock);
        this.detail = new DetailPanel(bench, words, decisions, this::edit, this::close);
        this.view = new ClaimsView(bench, words, this::choose, this::add);
    }

    @Override
    public PlaceName name() {
        return PlaceName.CLAIMS;
    }

    @Override
    public JComponent component() {
        return view;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(
                ledger -> {
                    ClaimsSheet sheet = new ClaimsReading(ledger, bench.locale()).sheet();
                    return () -> show(sheet);
                },
                ledger -> {
                    Optional<ClaimDetail> one = selected.flatMap(new ClaimsReading(ledger, bench.locale())::detail);
                    return () -> one.ifPresent(this::show);
                });
    }

    @Override
    public int openThings(View ledger) {
        return (int) new Assessment(ledger)
                .claims().stream()
                        .filter(standing -> ClaimGroup.of(standing.claim(), standing.state()) == ClaimGroup.CHANGED)
                        .count();
    }

    private void show(ClaimsSheet sheet) {
        decisions.leave(); // a step was made: what was asked is done, or about something older
        editing.ifPresent(RecordForm::refresh);
        form.ifPresent(ClaimForm::follow);
        adding.ifPresent(NewRecordForm::refresh);
        view.show(sheet, selected);
    }

    private void show(ClaimDetail one) {
        if (selected.equals(Optional.of(one.id())) && form.isEmpty()) {
            detail.show(one);
            view.detail(detail);
        }
    }

    private void choose(Optional<RecordId> id) {
        if (id.equals(selected)) {
            return;
        }
        decisions.leave();
        selected = id;
        if (adding.isEmpty()) {
            endForm();
        }
        ask();
    }

    private void ask() {
        selected.ifPresent(id -> bench.ask(
                ledger -> new ClaimsReading(ledger, bench.locale()).detail(id), one -> one.ifPresent(this::show)));
    }

    private void endForm() {
        form = Optional.empty();
        editing = Optional.empty();
        adding = Optional.empty();
    }

    private void close() {
        endForm();
        selected = Optional.empty();
        view.noDetail();
    }

    private void edit() {
        selected.ifPresent(id -> {
            RecordForm fields =
                    new RecordForm(bench, catalogue, Arrangement.usual().without("state", "stateReason"));
            fields.show(id);
            editing = Optional.of(fields);
            adding = Optional.empty();
            ClaimForm own = new ClaimForm(
                    words.text("detail.edit", id),
                    fields,
                    new Preview(bench, words),
                    words.text("detail.edited"),
                    this::doneEditing);
            form = Optional.of(own);
            view.detail(own);
        });
    }

    private void doneEditing() {
        endForm();
        ask();
    }

    private void add() {
        endForm();
        NewRecordForm fields =
                new NewRecordForm(bench, catalogue, RecordKinds.CLAIM, Map.of(), this::added, this::discard);
        adding = Optional.of(fields);
        ClaimForm own = new ClaimForm(
                words.text("add.title"), fields, new Preview(bench, words), words.text("detail.close"), this::discard);
        form = Optional.of(own);
        view.detail(own);
        fields.focusFirst();
    }

    private void added(RecordId id) {
        endForm();
        selected = Optional.of(id);
        view.reveal(id);
        ask();
    }

    private void discard() {
        endForm();
        selected.ifPresentOrElse(id -> ask(), view::noDetail);
    }

    @Override
    public void reveal(Address address) {
        decisions.leave();
        endForm();
        selected = Optional.of(address.record());
        view.reveal(address.record());
        if (address.path().isEmpty()) {
            ask();
        } else {
            edit();
            editing.ifPresent(fields -> fields.reveal(address));
        }
    }
}
