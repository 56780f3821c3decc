package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.drivetrain.search.Objective;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.SectionHead;
import groupwright.workbench.form.Sentence;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** What cassettes have to keep, what makes one better, and for whom it must do. */
final class LimitsPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Acts acts;
    private final Map<Entry, LimitField> fields = new EnumMap<>(Entry.class);
    private final Map<Entry, Sentence> sentences = new EnumMap<>(Entry.class);
    private final Map<Objective, JCheckBox> objectives = new EnumMap<>(Objective.class);
    private final Stack stack = new Stack(Metric.HALF_STEP.units());
    private final Stack more = new Stack(Metric.HALF_STEP.units());
    private final Stack groups = new Stack(0);
    private final JPanel fold = new JPanel(new BorderLayout());
    private final JCheckBox shrink = new JCheckBox();
    private final Sentence noObjective = new Sentence(Mark.MISSES);
    private final ActionButton find;
    private final JLabel took = new JLabel();
    private transient List<JCheckBox> riders = List.of();
    private transient List<CassettesSheet.Riders> ridersShown = List.of();
    private transient Optional<Draft> draft = Optional.empty();
    private transient Optional<RecordId> concept = Optional.empty();
    private transient Optional<Inquiry> inquiry = Optional.empty();

    /** What the panel asks for. */
    interface Acts {
        void find(Inquiry inquiry);

        void riders(Set<RecordId> chosen);
    }

    LimitsPanel(Words words, Acts acts) {
        super(new BorderLayout());
        this.words = words;
        this.acts = acts;
        this.find = ActionButton.main(words.text("find"), this::find);
        find.setName("find cassettes");
        setOpaque(false);
        setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), Metric.STEP.px(), Metric.STEP.px()));
        build();
        add(stack, BorderLayout.NORTH);
        Keys.bind(this, "ENTER", this::find);
    }

    private void build() {
        range(stack, Entry.SMALLEST_FROM, Entry.SMALLEST_TO);
        range(stack, Entry.LARGEST_FROM, Entry.LARGEST_TO);
        range(stack, Entry.COGS_FROM, Entry.COGS_TO);
        one(stack, Entry.STEP);
        one(stack, Entry.RINGS);
        fold.setOpaque(false);
        fold.add(new ActionLink(words.text("more"), this::unfold), BorderLayout.LINE_START);
        stack.add(fold);
        more.setVisible(false);
        one(more, Entry.STEP_FROM);
        one(more, Entry.JUMP);
        one(more, Entry.WITH);
        one(more, Entry.WITHOUT);
        one(more, Entry.MISMATCH);
        one(more, Entry.MISMATCH_FROM);
        one(more, Entry.POSITIONS);
        one(more, Entry.POSITIONS_FROM);
        one(more, Entry.DRIVER);
        more.add(box(
                shrink,
                words.text("shrink"),
                () -> change(
                        draft.map(now -> now.with(shrink.isSelected() ? Draft.Jumps.NEVER_SHRINK : Draft.Jumps.ANY)))));
        stack.add(more);
        stack.add(head("riders.head"));
        stack.add(groups);
        stack.add(head("better.head"));
        Stack better = new Stack(0);
        for (Objective objective : Objective.values()) {
            JCheckBox box = new JCheckBox();
            objectives.put(objective, box);
            better.add(box(box, words.text("better." + objective), this::objectives));
        }
        stack.add(better);
        stack.add(noObjective);
        stack.add(buttons());
    }

    private JComponent head(String key) {
        JPanel head = new JPanel(new BorderLayout());
        head.setOpaque(false);
        head.setBorder(BorderFactory.createEmptyBorder(Metric.HALF_STEP.px(), 0, 0, 0));
        head.add(SectionHead.view(words.text(key)));
        return head;
    }

    private static JCheckBox box(JCheckBox box, String text, Runnable changed) {
        box.setText(text);
        box.setOpaque(false);
        box.setFont(Type.TABLE.font(Weight.REGULAR));
        box.getAccessibleContext().setAccessibleName(text);
        box.addActionListener(event -> changed.run());
        return box;
    }

    private JComponent buttons() {
        JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        line.setOpaque(false);
        line.setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), 0, Metric.STEP.px(), 0));
        took.setFont(Type.SECONDARY.font(Weight.REGULAR));
        took.setForeground(Token.MUTED.colour());
        took.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, 0));
        line.add(find);
        line.add(took);
        return line;
    }

    private void range(Stack where, Entry from, Entry to) {
        JLabel between = new JLabel(words.text("to"));
        between.setFont(Type.SECONDARY.font(Weight.REGULAR));
        between.setForeground(Token.MUTED.colour());
        row(where, from, List.of(field(from), between, field(to)));
        sentence(where, from);
        sentence(where, to);
    }

    private void one(Stack where, Entry entry) {
        row(where, entry, List.of(field(entry)));
        sentence(where, entry);
    }

    private LimitField field(Entry entry) {
        LimitField field = new LimitField(entry, words, text -> change(draft.map(now -> now.with(entry, text))));
        fields.put(entry, field);
        return field;
    }

    private void row(Stack where, Entry entry, List<JComponent> parts) {
        JLabel label = new JLabel(words.text("label." + entry));
        label.setFont(Type.BODY.font(where == more ? Weight.REGULAR : Weight.STRONG));
        label.setLabelFor(fields.get(entry));
        JPanel right = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.HALF_STEP.px(), 0));
        right.setOpaque(false);
        parts.forEach(right::add);
        JPanel row = new JPanel(new BorderLayout(Metric.STEP.px(), 0));
        row.setOpaque(false);
        row.add(label, BorderLayout.CENTER);
        row.add(right, BorderLayout.LINE_END);
        where.add(row);
    }

    private void sentence(Stack where, Entry entry) {
        Sentence sentence = new Sentence(Mark.MISSES);
        sentences.put(entry, sentence);
        where.add(sentence);
    }

    /** Shows the limits that are not often asked for. */
    private void unfold() {
        boolean open = !more.isVisible();
        more.setVisible(open);
        fold.removeAll();
        fold.add(new ActionLink(words.text(open ? "fewer" : "more"), this::unfold), BorderLayout.LINE_START);
        fold.getComponent(0).requestFocusInWindow();
        revalidate();
        repaint();
    }

    private void objectives() {
        Set<Objective> chosen = EnumSet.noneOf(Objective.class);
        objectives.forEach((objective, box) -> {
            if (box.isSelected()) {
                chosen.add(objective);
            }
        });
        change(draft.map(now -> now.with(chosen)));
    }

    /** Begins with other limits, for a concept. */
    void start(Draft next, RecordId about) {
        concept = Optional.of(about);
        draft = Optional.empty(); // fields that are filled are not typed in
        fields.forEach((entry, field) -> field.setText(next.text(entry)));
        shrink.setSelected(next.jumps() == Draft.Jumps.NEVER_SHRINK);
        objectives.forEach((objective, box) -> box.setSelected(next.objectives().contains(objective)));
        change(Optional.of(next));
    }

    private void change(Optional<Draft> next) {
        if (next.isEmpty() || concept.isEmpty()) {
            return;
        }
        draft = next;
        DraftReading.Read read = DraftReading.of(next.get(), concept.get(), words);
        inquiry = read.inquiry();
        sentences.forEach((entry, sentence) -> sentence.say(read.wrong().getOrDefault(entry, "")));
        fields.forEach((entry, field) -> field.wrong(read.wrong().getOrDefault(entry, "")));
        noObjective.say(read.noObjective());
        find.setEnabled(inquiry.isPresent());
        stack.revalidate();
        stack.repaint();
    }

    /** The groups of the project; those already unchecked stay so. */
    void riders(List<CassettesSheet.Riders> next) {
        if (next.equals(ridersShown)) {
            return;
        }
        Set<RecordId> before = chosenRiders();
        Set<RecordId> known = new LinkedHashSet<>();
        ridersShown.forEach(one -> known.add(one.id()));
        ridersShown = next;
        groups.removeAll();
        List<JCheckBox> boxes = new ArrayList<>();
        for (CassettesSheet.Riders one : next) {
            JCheckBox box = new JCheckBox();
            box.setSelected(!known.contains(one.id()) || before.contains(one.id()));
            boxes.add(box);
            box(box, one.id() + "  " + one.title(), () -> acts.riders(chosenRiders()));
            box.setToolTipText(one.title());
            groups.add(box);
        }
        riders = boxes;
        revalidate();
    }

    Set<RecordId> chosenRiders() {
        Set<RecordId> chosen = new LinkedHashSet<>();
        for (int i = 0; i < riders.size(); i++) {
            if (riders.get(i).isSelected()) {
                chosen.add(ridersShown.get(i).id());
            }
        }
        return chosen;
    }

    /** Searches, if what was typed can be searched. */
    void find() {
        inquiry.ifPresent(acts::find);
    }

    void took(String text) {
        took.setText(text);
        find.setText(words.text("find.again"));
        find.getAccessibleContext().setAccessibleName(words.text("find.again"));
    }

    LimitField field(String entry) {
        return fields.get(Entry.valueOf(entry));
    }

    boolean canFind() {
        return find.isEnabled();
    }

    String said(Entry entry) {
        return sentences.get(entry).said();
    }

    @Override
    public java.awt.Dimension getPreferredSize() {
        java.awt.Dimension own = super.getPreferredSize();
        return new java.awt.Dimension(Look.pixels(248), own.height);
    }
}
