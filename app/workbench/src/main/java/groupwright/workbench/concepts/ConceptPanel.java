package groupwright.workbench.concepts;

import groupwright.documents.charts.ChartTable;
import groupwright.documents.charts.ConceptSign;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.ConceptTag;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.Locale;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** One concept: what it is, its steps with the cogs to change, its rings, and what can be done with it. */
final class ConceptPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Teeth teeth;
    private final transient Acts acts;
    private final JPanel head = clear(new BorderLayout(Metric.STEP.px(), 0));
    private final JPanel below = clear(new BorderLayout(Metric.STEP.px(), 0));
    private final JPanel picture = clear(new BorderLayout());
    private final ToothStrip rings;
    private final JPanel typed;
    private final ToothField ringField;
    private final ToothField cogField;
    private final SaidLine said;
    private transient ConceptsSheet.Entrant entrant;
    private transient Optional<CogChart> chart = Optional.empty();
    private transient Optional<ToothStrip> single = Optional.empty();

    /** What can be done with a concept besides changing its teeth. */
    interface Acts {
        void makeLead();

        void openForm();

        void showTable(ChartTable table);
    }

    ConceptPanel(ConceptsSheet.Entrant entrant, Teeth.Maker maker, Locale locale, Acts acts) {
        super(new Stack(Metric.HALF_STEP.units()));
        this.said = new SaidLine(locale);
        this.teeth = maker.of(entrant.id(), said::say);
        this.words = teeth.words();
        this.acts = acts;
        this.entrant = entrant;
        this.rings = new ToothStrip(ToothRow.RINGS, teeth, () -> type(ToothRow.RINGS));
        this.ringField = new ToothField(ToothRow.RINGS, teeth, () -> leave(ToothRow.RINGS));
        this.cogField = new ToothField(ToothRow.COGS, teeth, () -> leave(ToothRow.COGS));
        this.typed = fields();
        setOpaque(false);
        add(head);
        add(picture);
        add(below);
        add(typed);
        add(said);
        show(entrant);
    }

    private static JPanel clear(java.awt.LayoutManager layout) {
        JPanel panel = new JPanel(layout);
        panel.setOpaque(false);
        return panel;
    }

    private static JComponent caption(String text, Weight weight) {
        return new Prose(text, Type.CAPTION, weight, Token.MUTED);
    }

    private JPanel fields() {
        JPanel panel = clear(new Stack(Metric.HALF_STEP.units()));
        panel.add(labelled("rings.label", ringField));
        panel.add(labelled("cogs.label", cogField));
        panel.add(caption(words.text("type.hint"), Weight.REGULAR));
        panel.setVisible(false);
        return panel;
    }

    private JComponent labelled(String key, JComponent field) {
        JPanel line = clear(new BorderLayout(Metric.STEP.px(), 0));
        JLabel label = new JLabel(words.text(key));
        label.setFont(Type.SECONDARY.font(Weight.REGULAR));
        label.setForeground(Token.MUTED.colour());
        label.setLabelFor(field);
        line.add(label, BorderLayout.LINE_START);
        line.add(field, BorderLayout.CENTER);
        return line;
    }

    /** Shows the concept as it is now. */
    void show(ConceptsSheet.Entrant next) {
        boolean same = next.equals(entrant) && head.getComponentCount() > 0;
        entrant = next;
        if (same) {
            return;
        }
        getAccessibleContext().setAccessibleName(words.text("form.title", next.id(), next.title()));
        boolean focused = rings.isFocusOwner();
        showHead();
        showPicture();
        rings.show(next.rings());
        showBelow();
        if (focused) {
            rings.requestFocusInWindow();
        }
        revalidate();
        repaint();
    }

    private void showHead() {
        head.removeAll();
        ConceptTag tag = ConceptTag.of(entrant.sign(), entrant.id().text(), entrant.title(), getLocale());
        PaintedView<ConceptTag> mark = new PaintedView<>(new CutMark(Type.BODY), tag);
        mark.setMinimumSize(new java.awt.Dimension(0, mark.getPreferredSize().height));
        head.add(mark, BorderLayout.CENTER);
        head.add(standing(), BorderLayout.LINE_END);
        head.setPreferredSize(new java.awt.Dimension(0, Metric.HIT.px()));
    }

    private JComponent standing() {
        if (entrant.sign().standing() == ConceptSign.Standing.LEAD) {
            return label(words.text("lead.is"), Weight.STRONG, Token.INK);
        }
        if (entrant.standing() != Shown.Standing.WORKED_ON) {
            JLabel label = label(words.text("standing." + entrant.standing()), Weight.REGULAR, Token.MUTED);
            label.setToolTipText(entrant.reason());
            return label;
        }
        ActionLink link = new ActionLink(words.text("lead.make"), acts::makeLead);
        link.setName("lead " + entrant.id());
        link.getAccessibleContext().setAccessibleDescription(words.text("lead.name", entrant.id()));
        return link;
    }

    private static JLabel label(String text, Weight weight, Token colour) {
        JLabel label = new JLabel(text);
        label.setFont(Type.SECONDARY.font(weight));
        label.setForeground(colour.colour());
        label.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.HALF_STEP.px()));
        return label;
    }

    private void showPicture() {
        if (entrant.steps().isPresent() && chart.isPresent()) {
            chart.get().show(entrant.steps().get());
        } else if (entrant.steps().isPresent()) {
            chart = Optional.of(new CogChart(entrant.steps().get(), teeth, () -> type(ToothRow.COGS), acts::showTable));
            single = Optional.empty();
            put(chart.get());
        } else if (single.isEmpty()) {
            chart = Optional.empty();
            single = Optional.of(new ToothStrip(ToothRow.COGS, teeth, () -> type(ToothRow.COGS)));
            JPanel lines = clear(new BorderLayout(Metric.STEP.px(), 0));
            lines.add(label(words.text("cogs.label"), Weight.REGULAR, Token.MUTED), BorderLayout.LINE_START);
            lines.add(single.get(), BorderLayout.CENTER);
            lines.add(caption(words.text("steps.single"), Weight.REGULAR), BorderLayout.SOUTH);
            put(lines);
        }
        cogs().show(entrant.cogs());
    }

    private void put(JComponent component) {
        picture.removeAll();
        picture.add(component);
    }

    /** The cogs one can stand on. */
    ToothStrip cogs() {
        return chart.map(CogChart::strip).or(() -> single).orElseThrow();
    }

    ToothStrip rings() {
        return rings;
    }

    private void showBelow() {
        if (below.getComponentCount() > 0) {
            return;
        }
        JPanel left = clear(new FlowLayout(FlowLayout.LEADING, 0, 0));
        left.add(label(words.text("rings.label"), Weight.REGULAR, Token.MUTED));
        left.add(Box.createHorizontalStrut(Metric.HALF_STEP.px()));
        left.add(rings);
        JPanel right = clear(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        ActionLink type = new ActionLink(words.text("type.open"), () -> type(ToothRow.COGS));
        type.setName("teeth " + entrant.id());
        type.getAccessibleContext().setAccessibleDescription(words.text("type.name", entrant.id()));
        ActionLink form = new ActionLink(words.text("form.open"), acts::openForm);
        form.setName("form " + entrant.id());
        form.getAccessibleContext().setAccessibleDescription(words.text("form.name", entrant.id()));
        right.add(type);
        right.add(form);
        below.add(left, BorderLayout.LINE_START);
        below.add(right, BorderLayout.LINE_END);
    }

    private void type(ToothRow row) {
        typed.setVisible(true);
        ringField.begin(entrant.rings());
        cogField.begin(entrant.cogs());
        said.say("");
        revalidate();
        field(row).requestFocusInWindow();
    }

    private ToothField field(ToothRow row) {
        return row == ToothRow.COGS ? cogField : ringField;
    }

    private void leave(ToothRow row) {
        typed.setVisible(false);
        revalidate();
        (row == ToothRow.COGS ? cogs() : rings).requestFocusInWindow();
    }

    String said() {
        return said.said();
    }
}
