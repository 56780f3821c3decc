package groupwright.workbench.form;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.interchange.Draft;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.ObjectEdit;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.workbench.bench.Bench;
import java.awt.BorderLayout;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;

/**
 * A record that is not in the project yet. The draft lasts as long as this component, wherever the user looks meanwhile;
 * adding it is one edit, and it gets its id then.
 */
public final class NewRecordForm extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient RecordKind<?> kind;
    private final transient Consumer<RecordId> added;
    private final DraftPanel panel;
    private final String addWords;
    private transient Optional<RecordId> expected = Optional.empty();

    /**
     * @param given values to begin with, by field name
     * @param added told which record came of the draft, after the step that added it
     * @param discarded runs when the draft is given up
     */
    public NewRecordForm(
            Bench bench,
            Catalogue catalogue,
            RecordKind<?> kind,
            Map<String, ?> given,
            Consumer<RecordId> added,
            Runnable discarded) {
        super(new BorderLayout());
        this.bench = bench;
        this.kind = kind;
        this.added = added;
        setOpaque(false);
        Map<String, Object> values = new HashMap<>(given);
        values.put("id", RecordId.of(kind.letters(), 0));
        FormContext context =
                FormContext.of(bench, catalogue, Arrangement.usual().without("id"));
        panel = new DraftPanel(context, Draft.of(kind.shape(), values), kind.noun(), this::add, discarded);
        addWords = context.words().text("form.add", kind.noun());
        add(panel, BorderLayout.CENTER);
    }

    private void add(Object draft) {
        expected = Optional.of(bench.definition().nextId(kind));
        bench.edit(Optional.of(addWords), definition -> with(definition, kind, draft), this::refused);
    }

    private static Definition with(Definition definition, RecordKind<?> kind, Object draft) {
        RecordId id = definition.nextId(kind);
        return definition.with((Entry) ObjectEdit.with(draft, List.of(), Map.of("id", Optional.of(id))));
    }

    private void refused(Invalid invalid) {
        expected = Optional.empty();
        panel.body().say(invalid);
    }

    /** Gives the first field that is asked for the focus. */
    public void focusFirst() {
        panel.focusFirst();
    }

    /** After each step: tells who asked that the record is there. */
    public void refresh() {
        if (expected.flatMap(bench.definition()::get).isPresent()) {
            RecordId id = expected.get();
            expected = Optional.empty();
            added.accept(id);
        }
    }

    DraftPanel panel() {
        return panel;
    }
}
