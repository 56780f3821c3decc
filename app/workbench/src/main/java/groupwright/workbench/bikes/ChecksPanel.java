package groupwright.workbench.bikes;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bikes.BikesSheet.CheckLine;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.FigureChip;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Keys;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Function;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** All checks of a concept on a bike, each a sentence with its number, who asks for it, and what is missing. */
final class ChecksPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int BETWEEN = 12;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Runnable close;

    ChecksPanel(Bench bench, Words words, Runnable close) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.close = close;
        setName("bikes.checks");
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, 0, Metric.GAP.px(), 0));
        Keys.bindInside(this, "ESCAPE", close);
    }

    void show(BikesSheet.Opened opened) {
        removeAll();
        getAccessibleContext().setAccessibleName(opened.title());
        Stack stack = new Stack(0);
        stack.add(head(opened));
        int name = widest(
                opened.checks(), check -> new PaintedView<>(CellTextPainter.PLAIN, CellText.plain(check.title())));
        int number = widest(opened.checks(), this::chip);
        int limit = widest(
                opened.checks(), check -> new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(check.limit())));
        opened.checks().forEach(check -> stack.add(row(check, name, number, limit)));
        add(stack);
        revalidate();
        repaint();
    }

    private JComponent head(BikesSheet.Opened opened) {
        JPanel head = new JPanel(new BorderLayout(Metric.GAP.px(), 0));
        head.setOpaque(false);
        JComponent title = new PaintedView<>(
                CellTextPainter.PLAIN, CellText.plain(opened.title()).strong());
        Line left = new Line(BETWEEN, title, state(Mark.of(opened.fits())));
        ActionLink closing = new ActionLink(words.text("pane.close"), close);
        closing.setName("bikes.checks.close");
        head.add(left, BorderLayout.CENTER);
        head.add(new Line(0, closing), BorderLayout.LINE_END);
        return head;
    }

    private static int widest(List<CheckLine> checks, Function<CheckLine, JComponent> part) {
        return checks.stream()
                .mapToInt(check -> part.apply(check).getPreferredSize().width)
                .max()
                .orElse(0);
    }

    private JComponent row(CheckLine check, int name, int number, int limit) {
        Line line = new Line(BETWEEN);
        line.add(wide(new PaintedView<>(CellTextPainter.PLAIN, CellText.plain(check.title())), name));
        line.add(wide(chip(check), number));
        line.add(wide(new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(check.limit())), limit));
        line.add(wide(state(Mark.of(check.verdict())), Metric.VERDICT_COLUMN.px()));
        check.requirement().map(this::requirement).ifPresent(line::add);
        check.lacks().forEach(lack -> {
            LinkLabel link =
                    new LinkLabel(lack.words(), () -> bench.open(lack.input().address()));
            link.setName("bikes.lacks." + lack.input().address());
            link.setToolTipText(lack.input().remedy());
            line.add(link);
        });
        line.getAccessibleContext().setAccessibleName(check.sentence());
        return line;
    }

    private LinkLabel requirement(RecordId id) {
        LinkLabel link = new LinkLabel(id.text(), () -> bench.open(Address.of(id)));
        link.setName("bikes.requirement." + id);
        return link;
    }

    private PaintedView<Marked> state(Mark mark) {
        return new PaintedView<>(new MarkedPainter(Type.TABLE), Marked.of(mark, bench.locale()));
    }

    private FigureChip chip(CheckLine check) {
        Weight weight = check.number().check() == BikesSheet.Check.FAILS ? Weight.STRONG : Weight.REGULAR;
        Chip chip = ConceptCell.chip(check.number(), weight, bench, words);
        Chip alone = chip.line() == Chip.Line.SELECTED ? chip : chip.at(Chip.Line.SHOWN);
        FigureChip view = new FigureChip(alone, () -> check.number().ask().ifPresent(bench::select));
        view.setName("bikes.check." + check.title());
        return view;
    }

    private static JComponent wide(JComponent part, int width) {
        part.setPreferredSize(new Dimension(Math.max(width, Look.pixels(1)), part.getPreferredSize().height));
        return part;
    }
}
