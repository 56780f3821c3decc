package groupwright.workbench.riders;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.problem.Problem;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.components.Prose;
import groupwright.workbench.form.NewRecordForm;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.riders.RidersSheet.Cell;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;

/** The place of riders and their needs. */
public final class RidersPlace implements Place {
    private final Bench bench;
    private final Catalogue catalogue;
    private final Words words;
    private final FieldWords fields;
    private final RidersView view;
    private RidersSheet sheet = RidersSheet.NOTHING;
    private Optional<RecordPanel> record = Optional.empty();
    private Optional<NewRecordForm> adding = Optional.empty();
    private Optional<RecordId> answering = Optional.empty();

    public RidersPlace(Bench bench, Catalogue catalogue) {
        this.bench = bench;
        this.catalogue = catalogue;
        this.words = Words.of(RidersPlace.class, bench.locale());
        this.fields = new FieldWords(bench.locale());
        this.view = new RidersView(bench, words, new Steps());
    }

    /** What the view asks for. */
    private final class Steps implements RidersView.Asked {
        @Override
        public void open(Address address) {
            openForm(address);
        }

        @Override
        public void addGroup() {
            add(RecordKinds.RIDER_GROUP, words.text("form.newGroup"));
        }

        @Override
        public void addNeed() {
            add(RecordKinds.NEED, words.text("form.newNeed"));
        }

        @Override
        public void commit(ValueCell cell, Optional<?> value) {
            bench.edit(
                    Optional.empty(),
                    RiderEdits.set(cell.cell().at(), value),
                    invalid -> cell.say(fields.refusal(invalid, cell.cell().name())));
        }
    }

    @Override
    public PlaceName name() {
        return PlaceName.RIDERS;
    }

    @Override
    public JComponent component() {
        return view;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(ledger -> {
            RidersSheet next = new RidersReading(ledger, bench.locale()).sheet();
            return () -> show(next);
        });
    }

    /** Needs that nothing answers. */
    @Override
    public int openThings(View ledger) {
        return new Assessment(ledger).unansweredNeeds().size();
    }

    private void show(RidersSheet next) {
        sheet = next;
        view.show(next, this::was);
        record.ifPresent(panel -> panel.refresh(next));
        adding.ifPresent(NewRecordForm::refresh);
        answering.filter(id -> bench.definition().get(id).isPresent()).ifPresent(id -> {
            answering = Optional.empty();
            bench.open(Address.of(id, "statement"));
        });
    }

    /** What stood in a cell before the last step, in words; empty where that did not change it. */
    private String was(Cell cell) {
        Optional<?> before = before(cell);
        return before.map(value -> cell.notation().shown(Optional.of(value)))
                .filter(text -> !text.isEmpty())
                .map(text -> words.text("was", new ShownValue(text, cell.unit()).text()))
                .orElse("");
    }

    private Optional<?> before(Cell cell) {
        RecordId id = cell.at().record();
        Optional<?> before = present(bench.recent().before(cell.at()));
        if (!cell.at().path().equals(List.of(LineReading.WHEEL))) {
            return before;
        }
        Address seatAt = Address.of(id, "beadSeat_mm");
        Optional<?> seat = present(bench.recent().before(seatAt));
        if (before.isEmpty() && seat.isEmpty()) {
            return Optional.empty();
        }
        Definition now = bench.definition();
        Optional<?> tyreThen = before.isPresent() ? before : present(now.value(cell.at()));
        Optional<?> seatThen = seat.isPresent() ? seat : present(now.value(seatAt));
        return tyreThen.flatMap(tyre -> seatThen.map(bead -> new WheelNotation.Wheel(
                (groupwright.definition.record.Amount) tyre, (groupwright.definition.record.Amount) bead)));
    }

    private static Optional<?> present(Optional<Object> value) {
        return value.flatMap(one -> one instanceof Optional<?> inner ? inner : Optional.of(one));
    }

    private void openForm(Address address) {
        if (record.filter(panel -> panel.id().equals(address.record())).isEmpty()) {
            adding = Optional.empty();
            RecordPanel panel = new RecordPanel(bench, catalogue, words, address.record(), this::answer, this::close);
            panel.refresh(sheet);
            record = Optional.of(panel);
            view.detail(panel);
            view.select(address.record());
        }
        if (!address.path().isEmpty()) {
            record.ifPresent(panel -> panel.reveal(address));
        }
    }

    private void close() {
        record = Optional.empty();
        adding = Optional.empty();
        view.noDetail();
    }

    private void add(RecordKind<?> kind, String title) {
        record = Optional.empty();
        NewRecordForm form = new NewRecordForm(bench, catalogue, kind, Map.of(), this::added, this::close);
        adding = Optional.of(form);
        Stack stack = new Stack(Metric.STEP.units());
        stack.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        stack.add(new Prose(title, Type.HEADING, Weight.STRONG, Token.INK));
        stack.add(form);
        view.detail(stack);
        form.focusFirst();
    }

    private void added(RecordId id) {
        adding = Optional.empty();
        openForm(Address.of(id));
    }

    private void answer(RecordId need) {
        RecordId next = bench.definition().nextId(RecordKinds.REQUIREMENT);
        String title = words.text("answer.title", need);
        answering = Optional.of(next);
        bench.edit(
                Optional.of(words.text("answer.edit", need)),
                definition -> RiderEdits.answer(definition, need, title),
                invalid -> refused(need, invalid));
    }

    private void refused(RecordId need, Invalid invalid) {
        answering = Optional.empty();
        bench.tell(new Problem("", 0, 0, need.text(), invalid.field(), invalid.wrong(), invalid.remedy()));
    }

    @Override
    public void reveal(Address address) {
        boolean inColumn = !address.path().isEmpty() && view.focus(address);
        if (!inColumn) {
            openForm(address);
        }
    }
}
