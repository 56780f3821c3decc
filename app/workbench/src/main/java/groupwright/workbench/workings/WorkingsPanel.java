package groupwright.workbench.workings;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.documents.project.ConceptSigns;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.ChipPainter;
import groupwright.workbench.components.ConceptMark;
import groupwright.workbench.components.ConceptTag;
import groupwright.workbench.components.CriterionBand;
import groupwright.workbench.components.FigureChip;
import groupwright.workbench.components.Known;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.SectionHead;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.WorkingsSheet.Changed;
import groupwright.workbench.workings.WorkingsSheet.Input;
import groupwright.workbench.workings.WorkingsSheet.Judged;
import groupwright.workbench.workings.WorkingsSheet.Knowledge;
import groupwright.workbench.workings.WorkingsSheet.Link;
import groupwright.workbench.workings.WorkingsSheet.Mover;
import groupwright.workbench.workings.WorkingsSheet.Other;
import groupwright.workbench.workings.WorkingsSheet.Part;
import groupwright.workbench.workings.WorkingsSheet.Standing;
import groupwright.workbench.workings.WorkingsSheet.Target;
import groupwright.workbench.workings.WorkingsSheet.There;
import groupwright.workbench.workings.WorkingsSheet.ToField;
import groupwright.workbench.workings.WorkingsSheet.ToFigure;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** Shows one figure from top to bottom: value and verdict, formula, inputs, band, source, other concepts, need to page. */
public final class WorkingsPanel extends JPanel {

    private final transient Locale locale;
    private final transient Words words;
    private final transient Consumer<Ask> select;
    private final transient Consumer<Address> open;
    private final transient Consumer<String> openDocument;
    private final Column column = new Column();
    private final JScrollPane scroll;
    private transient Optional<WorkingsSheet> shown = Optional.empty();
    private transient Optional<Definition> definition = Optional.empty();

    /**
     * @param select makes another figure the one that is shown
     * @param open goes to a record or field
     * @param openDocument shows a document
     */
    public WorkingsPanel(Locale locale, Consumer<Ask> select, Consumer<Address> open, Consumer<String> openDocument) {
        super(new BorderLayout());
        this.locale = locale;
        this.words = Words.of(WorkingsPanel.class, locale);
        this.select = select;
        this.open = open;
        this.openDocument = openDocument;
        setName("workings");
        getAccessibleContext().setAccessibleName(words.text("title"));
        scroll = new JScrollPane(
                column, ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.getViewport().setBackground(Token.RAISED.colour());
        scroll.getVerticalScrollBar().setUnitIncrement(Metric.ROW.px());
        add(scroll);
        showNothing();
    }

    /** What is shown. */
    public Optional<WorkingsSheet> shown() {
        return shown;
    }

    /** Shows a figure. */
    public void show(WorkingsSheet sheet, Definition of) {
        boolean same = shown.map(WorkingsSheet::ask).equals(Optional.of(sheet.ask()));
        shown = Optional.of(sheet);
        definition = Optional.of(of);
        Component focus = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        String focused = focus != null && isAncestorOf(focus) ? focus.getName() : null;
        column.removeAll();
        build(sheet, of);
        column.revalidate();
        column.repaint();
        if (!same) {
            EventQueue.invokeLater(() -> scroll.getViewport().setViewPosition(new Point())); // once it is laid out
        }
        if (focused != null) {
            focusAgain(focused);
        }
    }

    private void focusAgain(String name) {
        for (Component child : column.everything()) {
            if (name.equals(child.getName())) {
                child.requestFocusInWindow();
                return;
            }
        }
    }

    /** Shows that nothing is selected. */
    public void showNothing() {
        shown = Optional.empty();
        column.removeAll();
        column.add(new Prose(words.text("title"), Type.HEADING, Weight.STRONG, Token.INK));
        column.add(new Prose(words.text("nothing.head"), Type.BODY, Weight.STRONG, Token.INK));
        column.add(new Prose(words.text("nothing.why"), Type.TABLE, Token.MUTED));
        column.revalidate();
        column.repaint();
    }

    private void build(WorkingsSheet sheet, Definition of) {
        column.add(title(sheet));
        column.add(name(sheet));
        sheet.concept().ifPresent(id -> {
            ConceptTag tag = ConceptTag.of(ConceptSigns.of(of, id), id.text(), "", locale);
            JPanel row = new JPanel(new PinLayout());
            row.setOpaque(false);
            row.add(new PaintedView<>(new ConceptMark(Type.SECONDARY, Token.RAISED), tag));
            row.add(new Prose(sheet.about(), Type.SECONDARY, Token.MUTED));
            column.add(row);
        });
        if (sheet.concept().isEmpty() && !sheet.about().isEmpty()) {
            column.add(new Prose(sheet.about(), Type.SECONDARY, Token.MUTED));
        }
        column.add(value(sheet));
        sheet.before()
                .ifPresent(was -> column.add(new Prose(words.text("was", was.text()), Type.SECONDARY, Token.MUTED)));
        sheet.judged().stream().skip(1).forEach(judged -> column.add(judgedRow(judged)));
        missing(sheet);
        section("formula");
        column.add(new Prose(sheet.formula(), Type.TABLE, Token.INK));
        if (!sheet.goesIn().isEmpty()) {
            section("goesIn");
            sheet.goesIn().forEach(input -> column.add(input(input)));
        }
        knowledge(sheet.knowledge());
        movers(sheet.movers());
        section("source");
        column.add(new Prose(sheet.source(), Type.TABLE, Token.INK));
        if (!sheet.leavesOut().isEmpty()) {
            section("leavesOut");
            column.add(new Prose(sheet.leavesOut(), Type.TABLE, Token.INK));
        }
        if (!sheet.others().isEmpty()) {
            section("others");
            sheet.others().forEach(other -> column.add(other(other, of)));
        }
        section("chain");
        chain(sheet.chain());
    }

    private JComponent title(WorkingsSheet sheet) {
        JPanel row = row();
        row.add(new Prose(words.text("title"), Type.HEADING, Weight.STRONG, Token.INK));
        ActionLink copy = new ActionLink(words.text("copy"), () -> copy(sheet));
        copy.setName("workings.copy");
        row.add(copy);
        return row;
    }

    private static void copy(WorkingsSheet sheet) {
        Toolkit.getDefaultToolkit()
                .getSystemClipboard()
                .setContents(new StringSelection(sheet.value().text() + "  " + sheet.ask()), null);
    }

    private JComponent name(WorkingsSheet sheet) {
        JPanel row = row();
        row.add(new Prose(sheet.name(), Type.BODY, Weight.STRONG, Token.INK));
        sheet.judged().stream().findFirst().ifPresent(judged -> {
            LinkLabel link =
                    new LinkLabel(judged.requirement().text(), () -> open.accept(Address.of(judged.requirement())));
            link.setName("workings.requirement");
            row.add(link);
        });
        return row;
    }

    /** The number large, with verdict and limit at its right; lists and words as text. */
    private JComponent value(WorkingsSheet sheet) {
        if (sheet.standing() == Standing.LIST) {
            return new Prose(sheet.value().text(), Type.TABLE, Token.INK);
        }
        JPanel row = row();
        FigureChip chip = new FigureChip(chip(sheet).at(Chip.Line.SELECTED), () -> select.accept(sheet.ask()));
        chip.setName("workings.value");
        JPanel holder = new JPanel(new BorderLayout());
        holder.setOpaque(false);
        holder.add(chip, BorderLayout.WEST);
        row.add(holder);
        sheet.judged().stream().findFirst().ifPresent(judged -> row.add(verdict(judged)));
        return row;
    }

    private Chip chip(WorkingsSheet sheet) {
        ShownValue value = sheet.value();
        String name = sheet.name() + ", " + sheet.about() + ", " + value.text();
        String copy = value.text() + "  " + sheet.ask();
        if (sheet.standing() == Standing.MISSING) {
            return Chip.missing(value.value(), name, copy, tip(sheet)).in(Type.HEADING, Weight.REGULAR);
        }
        Type type = sheet.standing() == Standing.WORD ? Type.HEADING : Type.NUMBER;
        Chip chip = Chip.of(value.value(), value.unit(), name, copy).in(type, Weight.STRONG);
        return sheet.before().isPresent() ? chip.changed() : chip;
    }

    private static String tip(WorkingsSheet sheet) {
        return sheet.missing().stream()
                .findFirst()
                .map(missing -> missing.address() + ": " + missing.remedy())
                .orElse("");
    }

    private JComponent verdict(Judged judged) {
        JPanel stack = new JPanel(new StackLayout(0));
        stack.setOpaque(false);
        stack.add(marked(judged.verdict()));
        stack.add(new Prose(judged.target(), Type.SECONDARY, Token.MUTED));
        stack.setPreferredSize(new Dimension(
                Metric.VERDICT_COLUMN.px() + Metric.STEP.px(), 2 * Look.pixels(Type.BODY.line()) + Metric.STEP.px()));
        return stack;
    }

    private JComponent marked(Verdict verdict) {
        return new PaintedView<>(
                new MarkedPainter(Type.TABLE),
                Marked.of(Mark.of(verdict), locale).strong());
    }

    private JComponent judgedRow(Judged judged) {
        JPanel row = row();
        row.add(marked(judged.verdict()));
        row.add(new Prose(judged.target(), Type.SECONDARY, Token.MUTED));
        row.add(new LinkLabel(judged.requirement().text(), () -> open.accept(Address.of(judged.requirement()))));
        return row;
    }

    private void missing(WorkingsSheet sheet) {
        if (sheet.missing().isEmpty()) {
            return;
        }
        section("missing");
        for (WorkingsSheet.MissingField field : sheet.missing()) {
            column.add(new Prose(field.remedy(), Type.TABLE, Token.INK));
            LinkLabel link = new LinkLabel(field.address().toString(), () -> open.accept(field.address()));
            link.setName("workings.fill." + field.address());
            column.add(link);
        }
    }

    private JComponent input(Input input) {
        JPanel row = row();
        row.add(new Prose(input.label(), Type.TABLE, Token.INK));
        Chip chip = Chip.of(
                input.value().value(),
                input.value().unit(),
                input.label() + ", " + input.value().text(),
                input.value().text());
        boolean wide = input.value().text().length() > 18;
        Chip shownChip = input.changed() == Changed.YES ? chip.changed() : chip;
        if (wide) { // a list of cogs has a line of its own
            JPanel stack = new JPanel(new StackLayout(0));
            stack.setOpaque(false);
            row.add(link(input.place(), input.leadsTo(), "workings.in." + input.label()));
            stack.add(row);
            stack.add(new Prose(input.value().text(), Type.TABLE, Token.INK));
            return stack;
        }
        row.add(new PaintedView<>(ChipPainter.ALONE, shownChip));
        row.add(link(input.place(), input.leadsTo(), "workings.in." + input.label()));
        return row;
    }

    private JComponent link(String text, Target target, String name) {
        String label = text.isEmpty() ? "–" : text;
        JComponent link = target instanceof WorkingsSheet.Nowhere
                ? new Prose(label, Type.TABLE, Token.MUTED)
                : new LinkLabel(label, Type.TABLE, () -> follow(target));
        link.setName(name);
        return link;
    }

    private void follow(Target target) {
        if (target instanceof ToField field) {
            open.accept(field.address());
        } else if (target instanceof ToFigure figure) {
            select.accept(figure.ask());
        } else if (target instanceof WorkingsSheet.ToDocument document) {
            openDocument.accept(document.name());
        }
    }

    private void knowledge(Knowledge knowledge) {
        if (knowledge.words().isEmpty()) {
            return;
        }
        section("knowledge");
        knowledge
                .band()
                .ifPresentOrElse(
                        span -> column.add(new PaintedView<>(CriterionBand.PLAIN, known(span, knowledge))),
                        () -> column.add(new Prose(knowledge.words(), Type.TABLE, Token.INK)));
        for (Part part : knowledge.parts()) {
            JPanel row = row();
            row.add(new LinkLabel(part.label() + " " + part.band(), Type.TABLE, () -> open.accept(part.address())));
            row.add(new PaintedView<>(new TextLine(Token.INK), part.effect()));
            column.add(row);
        }
        if (!knowledge.advice().isEmpty()) {
            column.add(new Prose(knowledge.advice(), Type.TABLE, Token.INK));
        }
    }

    private void movers(List<Mover> movers) {
        if (movers.isEmpty()) {
            return;
        }
        section("movers");
        column.add(new Prose(words.text("movers.how"), Type.SECONDARY, Token.MUTED));
        for (Mover mover : movers) {
            JPanel row = row();
            row.add(new LinkLabel(
                    mover.label() + " " + mover.change(), Type.TABLE, () -> open.accept(mover.address())));
            row.add(new PaintedView<>(new TextLine(Token.INK), mover.effect()));
            column.add(row);
        }
    }

    private Known known(WorkingsSheet.Span span, Knowledge knowledge) {
        return new Known(
                span.low(),
                span.high(),
                span.value(),
                span.target().map(at -> new Known.Target(at, words.text("target"))),
                span.lowText(),
                span.highText(),
                knowledge.words());
    }

    private JComponent other(Other other, Definition of) {
        JPanel row = row();
        ConceptTag tag = ConceptTag.of(
                ConceptSigns.of(of, other.concept()), other.concept().text(), "", locale);
        row.add(new PaintedView<>(new ConceptMark(Type.TABLE, Token.RAISED), tag));
        ShownValue value = other.value();
        FigureChip chip = new FigureChip(
                Chip.of(
                        value.value(),
                        value.unit(),
                        other.ask().figure().name() + ", " + other.concept() + ", " + value.text(),
                        value.text() + "  " + other.ask()),
                () -> select.accept(other.ask()));
        chip.setName("workings.other." + other.concept());
        row.add(chip);
        other.verdict().ifPresent(verdict -> {
            JComponent mark = new PaintedView<>(new MarkedPainter(Type.TABLE), Marked.of(Mark.of(verdict), locale));
            mark.setPreferredSize(
                    new Dimension(Metric.VERDICT_COLUMN.px() + Metric.STEP.px(), mark.getPreferredSize().height));
            row.add(mark);
        });
        return row;
    }

    private void chain(List<Link> links) {
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            boolean first = i == 0;
            boolean repeated = !first && links.get(i - 1).step() == link.step();
            boolean next = i + 1 < links.size() && links.get(i + 1).there() != There.NOTHING_YET;
            String word = words.text("step." + link.step().name().toLowerCase(Locale.ROOT));
            JPanel row = new JPanel(new PinLayout());
            row.setOpaque(false);
            row.add(new PaintedView<>(
                    new ChainPin(first, i == links.size() - 1),
                    new ChainPin.Value(repeated ? "" : word, link.there(), next, word + ": " + link.text())));
            row.add(chainText(link, i));
            if (link.changed() == Changed.YES) {
                row.add(new PaintedView<>(new VerdictMark(locale), Mark.CHANGED));
            }
            column.add(row);
        }
    }

    private JComponent chainText(Link link, int index) {
        if (link.there() == There.HERE) {
            return new Prose(link.text(), Type.TABLE, Weight.STRONG, Token.INK);
        } else if (link.there() == There.NOTHING_YET) {
            return new Prose(link.text(), Type.TABLE, Token.MUTED);
        }
        return link(link.text(), link.leadsTo(), "workings.chain." + index);
    }

    private JPanel row() {
        JPanel row = new JPanel(new EndsLayout(Metric.STEP.px(), Metric.CLOSE_ROW.px()));
        row.setOpaque(false);
        return row;
    }

    private void section(String key) {
        column.add(SectionHead.view(words.text("section." + key)));
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.RAISED.colour();
    }
}
