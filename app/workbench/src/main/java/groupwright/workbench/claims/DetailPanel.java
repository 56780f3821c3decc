package groupwright.workbench.claims;

import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.SectionHead;
import groupwright.workbench.form.RecordActions;
import groupwright.workbench.lists.Beside;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** A claim in full: wording, what it rests on, who approved it on what, and what one can do. */
final class DetailPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Decisions decisions;
    private final transient DetailParts parts;
    private final RecordActions actions;
    private final transient Runnable edit;
    private final transient Runnable close;
    private final Stack stack = new Stack(Metric.HALF_STEP.units());
    private transient Optional<ClaimDetail> shown = Optional.empty();

    DetailPanel(Bench bench, Words words, Decisions decisions, Runnable edit, Runnable close) {
        super(new java.awt.BorderLayout());
        this.words = words;
        this.decisions = decisions;
        this.parts = new DetailParts(bench, words);
        this.actions = new RecordActions(bench);
        this.edit = edit;
        this.close = close;
        setOpaque(false);
        stack.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        add(stack);
        decisions.whenAskingChanges(this::build);
    }

    Optional<ClaimDetail> shown() {
        return shown;
    }

    void show(ClaimDetail detail) {
        shown = Optional.of(detail);
        actions.show(detail.id());
        actions.refresh();
        build();
    }

    private void build() {
        stack.removeAll();
        shown.ifPresent(detail -> {
            stack.add(head(detail));
            stack.add(new Prose(detail.wording().quoted(), Type.HEADING, Weight.STRONG, Token.INK));
            parts.numbers(detail.wording()).ifPresent(stack::add);
            Stack left = new Stack(Metric.HALF_STEP.units());
            parts.rests(left, detail);
            parts.sentences(left, "detail.basis", List.of(detail.basis().text()));
            parts.numbers(detail.basis()).ifPresent(left::add);
            parts.sentences(left, "detail.where", List.of(detail.channel()));
            Stack right = new Stack(Metric.HALF_STEP.units());
            todo(right, detail);
            parts.sentences(right, "detail.open", detail.broken());
            parts.sentences(right, "detail.reason", List.of(detail.reason()));
            parts.approvals(right, detail);
            stack.add(new Beside(left, right));
        });
        stack.revalidate();
        stack.repaint();
    }

    private JComponent head(ClaimDetail detail) {
        Line line = new Line(Metric.GAP.units());
        line.add(new PaintedView<>(
                CellTextPainter.PLAIN, CellText.muted(detail.id().text())));
        detail.group()
                .mark()
                .ifPresentOrElse(
                        mark -> line.add(new PaintedView<>(
                                new MarkedPainter(Type.TABLE), new Marked(mark, detail.state(), Weight.REGULAR))),
                        () -> line.add(new PaintedView<>(CellTextPainter.PLAIN, CellText.plain(detail.state()))));
        if (!detail.detail().isBlank()) {
            line.add(new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(detail.detail())));
        }
        ActionLink closing = new ActionLink(words.text("detail.close"), close);
        closing.setName("claims.close");
        JPanel head = new JPanel(new java.awt.BorderLayout());
        head.setOpaque(false);
        head.add(line);
        head.add(new Line(0, closing), java.awt.BorderLayout.LINE_END);
        return head;
    }

    private void todo(Stack into, ClaimDetail detail) {
        into.add(SectionHead.view(words.text("detail.do")));
        if (decisions.asking().isPresent()) {
            into.add(decisions.asking().get());
            return;
        }
        String id = detail.id().text();
        switch (detail.group()) {
            case CHANGED -> {
                into.add(
                        action("approve", words.text("do.approveAgain", id), () -> decisions.askApproval(detail.id())));
                into.add(action("withdraw", words.text("do.withdraw", id), () -> decisions.askReason(detail.id())));
            }
            case UNSUPPORTED, PROPOSED -> {
                into.add(action("approve", words.text("do.approve", id), () -> decisions.askApproval(detail.id())));
                into.add(action("withdraw", words.text("do.withdraw", id), () -> decisions.askReason(detail.id())));
            }
            case HOLDING ->
                into.add(action("withdraw", words.text("do.withdraw", id), () -> decisions.askReason(detail.id())));
            case WITHDRAWN ->
                into.add(action("propose", words.text("do.propose", id), () -> decisions.propose(detail.id())));
            case RETIRED -> {
                // brought back below
            }
        }
        into.add(action("edit", words.text("detail.edit", id), edit));
        into.add(actions);
    }

    private JComponent action(String name, String text, Runnable done) {
        ActionLink link = new ActionLink(text, done);
        link.setName("claims." + name);
        return new Line(0, link);
    }
}
