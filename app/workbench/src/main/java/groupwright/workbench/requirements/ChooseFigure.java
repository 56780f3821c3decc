package groupwright.workbench.requirements;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Address;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.ItemList;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Shape;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.Prose;
import groupwright.workbench.form.FigureChooser;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Criteria;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.notation.Notations;
import java.awt.Component;
import java.awt.FlowLayout;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** Makes a requirement measurable in place: figure, parameters, comparator, target and unit become one criterion in one edit. */
final class ChooseFigure extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Notations notations;
    private final transient RecordId requirement;
    private final FigureChooser chooser;
    private final JPanel fields = new JPanel();
    private final transient Map<String, FieldLine> lines = new LinkedHashMap<>();
    private final JComboBox<String> comparator = new JComboBox<>();
    private final JTextField target = new JTextField();
    private final JTextField upper = new JTextField();
    private final JTextField unit = new JTextField();
    private transient Optional<Figure> figure = Optional.empty();

    ChooseFigure(
            Bench bench, Catalogue catalogue, RecordId requirement, String statement, Words words, Runnable leave) {
        super();
        this.bench = bench;
        this.words = words;
        this.requirement = requirement;
        this.notations = new Notations(bench.locale(), bench::definition, catalogue);
        this.chooser = new FigureChooser(catalogue, bench.locale(), this::choose);
        setOpaque(false);
        setLayout(new BoxLayout(this, BoxLayout.PAGE_AXIS));
        setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        for (Criterion.Comparator one : Criterion.Comparator.values()) {
            comparator.addItem(words.text("comparator." + one.name()));
        }
        comparator.addActionListener(event -> line("upper").ifPresent(line -> line.setVisible(isBetween())));
        fields.setOpaque(false);
        fields.setLayout(new BoxLayout(fields, BoxLayout.PAGE_AXIS));
        atStart(new Prose(words.text("choose.title", requirement), Type.HEADING, Weight.STRONG, Token.INK));
        Prose said = new Prose(statement, Type.TABLE, Token.MUTED);
        said.setBorder(BorderFactory.createEmptyBorder(0, 0, Metric.STEP.px(), 0));
        atStart(said);
        lines.put("figure", new FieldLine(words.text("choose.figure"), chooser, new JLabel(), bench.locale()));
        atStart(lines.get("figure"));
        atStart(fields);
        atStart(buttons(leave));
    }

    private void atStart(JComponent component) {
        component.setAlignmentX(LEFT_ALIGNMENT);
        add(component);
    }

    private JPanel buttons(Runnable leave) {
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        buttons.setOpaque(false);
        buttons.add(ActionButton.main(words.text("choose.add"), this::add));
        JPanel gap = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        gap.setOpaque(false);
        gap.add(ActionButton.plain(words.text("choose.leave"), leave));
        buttons.add(gap);
        return buttons;
    }

    /** Gives the figure the focus. */
    void focusFirst() {
        firstField(chooser).requestFocusInWindow();
    }

    private static Component firstField(JComponent in) {
        for (Component child : in.getComponents()) {
            if (child instanceof JTextField) {
                return child;
            } else if (child instanceof JComponent inner && firstField(inner) instanceof JTextField found) {
                return found;
            }
        }
        return in;
    }

    void choose(Figure chosen) {
        if (figure.equals(Optional.of(chosen))) {
            return;
        }
        figure = Optional.of(chosen);
        say("figure", "");
        lines.keySet().removeIf(name -> !name.equals("figure"));
        fields.removeAll();
        chosen.parameters().forEach(this::addParameter);
        Map<String, Optional<?>> says = Criteria.choosing(
                chosen,
                Shape.of(Criterion.class),
                blank(chosen),
                bench.definition().project().currency());
        said(says, "comparator")
                .ifPresent(better -> comparator.setSelectedIndex(((Criterion.Comparator) better).ordinal()));
        unit.setText(said(says, "unit").map(Object::toString).orElse(""));
        unit.setEditable(chosen.unit().equals(Unit.AS_RECORDED));
        addLine("comparator", words.text("choose.comparator"), comparator, "");
        addLine("target", words.text("choose.target"), target, "");
        addLine("upper", words.text("choose.upper"), upper, "");
        line("upper").ifPresent(line -> line.setVisible(isBetween()));
        addLine("unit", words.text("choose.unit"), unit, "");
        unit.setEnabled(unit.isEditable());
        revalidate();
        repaint();
    }

    private static Optional<Object> said(Map<String, Optional<?>> says, String field) {
        return says.getOrDefault(field, Optional.empty()).map(value -> (Object) value);
    }

    private static Criterion blank(Figure figure) {
        return new Criterion(
                "k1",
                figure.id(),
                groupwright.definition.record.Settings.NONE,
                Criterion.Comparator.AT_LEAST,
                groupwright.definition.record.Amount.of(0),
                Optional.empty(),
                "",
                Optional.empty());
    }

    private void addParameter(Parameter parameter) {
        JTextField field = new JTextField(parameter.usual().orElse(""));
        addLine(
                parameter.name(),
                FieldWords.sentenceCase(parameter.name().replace('-', ' ')),
                field,
                notations.words().help(parameter));
    }

    private void addLine(String name, String label, JComponent field, String tip) {
        if (!tip.isEmpty()) {
            field.setToolTipText(tip);
        }
        FieldLine line = new FieldLine(label, field, new JLabel(), bench.locale());
        line.setAlignmentX(LEFT_ALIGNMENT);
        lines.put(name, line);
        fields.add(line);
    }

    private Optional<FieldLine> line(String name) {
        return Optional.ofNullable(lines.get(name));
    }

    /** What is said under a field; empty where nothing is wrong. */
    String said(String name) {
        return line(name).map(FieldLine::said).orElse("");
    }

    /** The field of a name; nothing before a figure that has it is chosen. */
    Optional<JComponent> field(String name) {
        return line(name).map(FieldLine::field);
    }

    private boolean isBetween() {
        return comparator.getSelectedIndex() == Criterion.Comparator.BETWEEN.ordinal();
    }

    private void say(String name, String sentence) {
        line(name).or(() -> line("figure")).ifPresent(line -> line.say(sentence));
    }

    /** Adds the criterion, or says at each field what is wrong. */
    void add() {
        lines.values().forEach(line -> line.say(""));
        if (figure.isEmpty()) {
            say("figure", words.text("choose.none"));
            return;
        }
        CriterionDraft.Read read = draft(figure.get()).read(notations);
        read.wrong().forEach(this::say);
        read.wrong().keySet().stream().findFirst().flatMap(this::field).ifPresent(JComponent::requestFocusInWindow);
        read.criterion().ifPresent(this::add);
    }

    private CriterionDraft draft(Figure chosen) {
        Map<String, String> parameters = new LinkedHashMap<>();
        chosen.parameters()
                .forEach(parameter -> field(parameter.name())
                        .map(JTextField.class::cast)
                        .ifPresent(field -> parameters.put(parameter.name(), field.getText())));
        return new CriterionDraft(
                chosen,
                parameters,
                Criterion.Comparator.values()[comparator.getSelectedIndex()],
                target.getText(),
                upper.getText(),
                unit.getText());
    }

    private void add(Criterion criterion) {
        bench.edit(
                Optional.of(words.text("choose.edit", requirement)),
                definition -> with(definition, criterion),
                this::refused);
    }

    private Definition with(Definition definition, Criterion criterion) {
        return ItemList.edit(definition, Address.of(requirement, "criteria"), list -> ItemList.added(list, criterion));
    }

    private void refused(Invalid invalid) {
        String[] path = invalid.field().split("\\.");
        String name = path[path.length - 1];
        say(name, notations.words().refusal(invalid, FieldWords.sentenceCase(name)));
    }
}
