package groupwright.workbench.riders;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.form.Arrangement;
import groupwright.workbench.form.RecordActions;
import groupwright.workbench.form.RecordForm;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JPanel;

/** A rider group or a need in full: its fields, who answers it, and what one can do with it. */
final class RecordPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final RecordForm form;
    private final RecordActions actions;
    private final transient RecordId id;
    private final Stack links = new Stack(Metric.HALF_STEP.units());
    private final transient Consumer<RecordId> answer;

    RecordPanel(Bench bench, Catalogue catalogue, Words words, RecordId id, Consumer<RecordId> answer, Runnable close) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.id = id;
        this.answer = answer;
        setOpaque(false);
        setName("riders.record");
        form = new RecordForm(bench, catalogue, Arrangement.usual());
        form.show(id);
        actions = new RecordActions(bench);
        actions.show(id);
        Stack stack = new Stack(Metric.STEP.units());
        stack.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        JPanel head = new JPanel(new BorderLayout());
        head.setOpaque(false);
        head.add(new Line(
                Metric.STEP.units(), new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(id.text())), actions));
        ActionLink closing = new ActionLink(words.text("close"), close);
        closing.setName("riders.close");
        head.add(new Line(0, closing), BorderLayout.LINE_END);
        stack.add(head);
        stack.add(links);
        stack.add(form);
        add(stack);
    }

    RecordId id() {
        return id;
    }

    void reveal(Address address) {
        form.reveal(address);
    }

    /** After each step. */
    void refresh(RidersSheet sheet) {
        form.refresh();
        actions.refresh();
        links.removeAll();
        Optional<NeedRow> need =
                sheet.needs().stream().filter(row -> row.id().equals(id)).findFirst();
        need.ifPresent(this::need);
        links.revalidate();
        links.repaint();
    }

    private void need(NeedRow need) {
        links.add(new Prose(need.words(), Type.HEADING, Weight.STRONG, Token.INK));
        Line line = line("detail.answered", need.answeredBy());
        if (need.answeredBy().isEmpty()) {
            line.add(new PaintedView<>(CellTextPainter.PLAIN, CellText.plain(words.text("answered.nothing"))));
        }
        if (need.isCurrent()) {
            ActionButton button = ActionButton.plain(words.text("answer"), () -> answer.accept(id));
            button.setName("riders.answer");
            line.add(button);
        }
        links.add(line);
        if (!need.against().isEmpty()) {
            links.add(line("detail.against", need.against()));
        }
    }

    private Line line(String key, List<RecordId> leads) {
        Line line = new Line(Metric.STEP.units() + Metric.HALF_STEP.units());
        line.add(new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(words.text(key))));
        for (RecordId to : leads) {
            LinkLabel link = new LinkLabel(to.text(), () -> bench.open(Address.of(to)));
            link.setName("riders.leads." + to);
            line.add(link);
        }
        return line;
    }
}
