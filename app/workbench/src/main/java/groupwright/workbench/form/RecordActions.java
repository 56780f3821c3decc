package groupwright.workbench.form;

import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Lifecycle;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JPanel;

/** What can be done with a record as a whole: duplicate, park, retire, and back; a reason is asked for in place. */
public final class RecordActions extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private transient Optional<Entry> record = Optional.empty();
    private transient Optional<ReasonPanel> asking = Optional.empty();

    public RecordActions(Bench bench) {
        super(new FlowLayout(FlowLayout.LEADING, Metric.HALF_STEP.px(), 0));
        this.bench = bench;
        this.words = Words.of(RecordActions.class, bench.locale());
        setOpaque(false);
    }

    /** The actions of a record. */
    public void show(RecordId id) {
        if (!record.map(Entry::id).equals(Optional.of(id))) {
            asking = Optional.empty();
        }
        record = bench.definition().get(id);
        build();
    }

    private void build() {
        removeAll();
        if (asking.isPresent()) {
            setLayout(new java.awt.BorderLayout());
            add(asking.get());
        } else {
            setLayout(new FlowLayout(FlowLayout.LEADING, Metric.HALF_STEP.px(), 0));
            record.ifPresent(entry -> actions(entry).forEach(this::add));
        }
        revalidate();
        repaint();
    }

    private List<Action> actions(Entry entry) {
        List<Action> actions = new ArrayList<>();
        RecordKind<?> kind = RecordKinds.of(entry.id()).orElseThrow();
        if (kind.equals(RecordKinds.PROJECT)) {
            return actions;
        }
        RecordId id = entry.id();
        actions.add(direct("record.duplicate", id, definition -> Lifecycle.duplicate(definition, id)));
        if (!entry.isCurrent()) {
            actions.add(direct("record.bringBack", id, definition -> Lifecycle.bringBack(definition, id)));
            return actions;
        }
        if (Lifecycle.isParked(entry)) {
            actions.add(direct("record.unpark", id, definition -> Lifecycle.unpark(definition, id)));
        } else if (Lifecycle.canBeParked(kind)) {
            actions.add(reasoned("record.park", id, why -> definition -> Lifecycle.park(definition, id, why)));
        }
        actions.add(reasoned("record.retire", id, why -> definition -> Lifecycle.retire(definition, id, why)));
        return actions;
    }

    private Action direct(String key, RecordId id, UnaryOperator<Definition> edit) {
        String name = words.text(key, id);
        return new Action(name, name, () -> bench.edit(Optional.of(name), edit, this::tell));
    }

    private void tell(Invalid invalid) {
        bench.tell(new groupwright.definition.problem.Problem(
                "",
                0,
                0,
                record.map(entry -> entry.id().text()).orElse(""),
                invalid.field(),
                invalid.wrong(),
                invalid.remedy()));
    }

    private Action reasoned(String key, RecordId id, Function<String, UnaryOperator<Definition>> edit) {
        String name = words.text(key, id);
        return new Action(words.text("record.asks", name), name, () -> ask(name, edit));
    }

    private void ask(String name, Function<String, UnaryOperator<Definition>> edit) {
        Runnable leave = () -> {
            asking = Optional.empty();
            build();
        };
        asking = Optional.of(
                new ReasonPanel(bench.locale(), name, (why, refused) -> act(name, edit.apply(why), refused), leave));
        build();
        asking.get().reason().requestFocusInWindow();
    }

    /** The question closes when the record has changed, see {@link #refresh}. */
    private void act(String name, UnaryOperator<Definition> edit, Consumer<Invalid> refused) {
        bench.edit(Optional.of(name), edit, refused);
    }

    /** After each step: the question closes where what it asked about is done. */
    public void refresh() {
        record.ifPresent(before -> {
            Optional<Entry> now = bench.definition().get(before.id());
            if (!now.equals(record)) {
                asking = Optional.empty();
            }
            record = now;
            build();
        });
    }

    Optional<ReasonPanel> asking() {
        return asking;
    }
}
