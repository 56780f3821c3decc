package groupwright.workbench.shell;

import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.project.ConceptSigns;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.ConceptChooserButton;
import groupwright.workbench.components.ConceptTag;
import groupwright.workbench.components.Prose;
import groupwright.workbench.find.FindField;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.StackLayout;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.GridBagLayout;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;

/** Project, lead concept, finding, undo and redo. */
final class TopBar extends JPanel {
    private static final int MOST_CONCEPTS = 4;

    /** What the bar does. */
    interface Acts {
        void lead(RecordId concept);

        void undo();

        void redo();
    }

    private final transient Words words;
    private final transient Acts acts;
    private final JPanel name = new JPanel(new StackLayout(0));
    private final JPanel concepts = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
    private final JPanel steps = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.GAP.px(), 0));
    private final FindField find;
    private transient Optional<Definition> shown = Optional.empty();
    private boolean narrow;

    TopBar(Words words, FindField find, Acts acts) {
        super(new BorderLayout());
        this.words = words;
        this.find = find;
        this.acts = acts;
        setName("topBar");
        name.setOpaque(false);
        name.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, 0));
        concepts.setOpaque(false);
        steps.setOpaque(false);
        JPanel middle = new JPanel(new BorderLayout(Metric.GAP.px(), 0));
        middle.setOpaque(false);
        middle.add(middled(concepts), BorderLayout.LINE_START);
        middle.add(new FieldHolder(find), BorderLayout.CENTER);
        add(middled(name), BorderLayout.LINE_START);
        add(middle, BorderLayout.CENTER);
        add(middled(steps), BorderLayout.LINE_END);
    }

    private static JComponent middled(JComponent inner) {
        JPanel holder = new JPanel(new GridBagLayout());
        holder.setOpaque(false);
        holder.add(inner);
        return holder;
    }

    /** Shows a project. */
    void show(Definition definition) {
        shown = Optional.of(definition);
        narrow = isNarrow();
        name.removeAll();
        int room = Metric.RAIL.px() - Metric.GAP.px();
        name.add(new Prose(definition.project().name(), Type.HEADING, Weight.STRONG, Token.INK));
        if (!definition.project().company().isEmpty()) {
            name.add(new Prose(definition.project().company(), Type.CAPTION, Token.MUTED));
        }
        name.setPreferredSize(new Dimension(Metric.RAIL.px(), name.getLayout().preferredLayoutSize(name).height));
        for (java.awt.Component child : name.getComponents()) {
            child.setSize(room, 1);
        }
        name.setPreferredSize(new Dimension(
                Metric.RAIL.px(),
                java.util.Arrays.stream(name.getComponents())
                        .mapToInt(child -> child.getPreferredSize().height)
                        .sum()));
        concepts.removeAll();
        List<Concept> chosen = shown(definition);
        if (!chosen.isEmpty() && !narrow) {
            Prose label = new Prose(words.text("lead"), Type.SECONDARY, Token.MUTED);
            label.setLineWrap(false);
            JPanel holder = new JPanel(new BorderLayout());
            holder.setOpaque(false);
            holder.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.STEP.px()));
            holder.add(label);
            concepts.add(holder);
        }
        for (Concept concept : chosen.subList(0, Math.min(MOST_CONCEPTS, chosen.size()))) {
            concepts.add(button(definition, concept));
        }
        if (chosen.size() > MOST_CONCEPTS) {
            concepts.add(more(definition, chosen.subList(MOST_CONCEPTS, chosen.size())));
        }
        revalidate();
        repaint();
    }

    private boolean isNarrow() {
        return getWidth() > 0 && getWidth() < Metric.FOLD_WIDTH.px();
    }

    /** The window has another width. */
    void resized() {
        if (shown.isPresent() && narrow != isNarrow()) {
            show(shown.get());
        }
    }

    /** Those worked on; the lead in front where it would not be in sight. */
    static List<Concept> shown(Definition definition) {
        Optional<RecordId> lead = definition.project().leadConcept();
        List<Concept> current = new ArrayList<>(definition.all(RecordKinds.CONCEPT).stream()
                .filter(concept -> concept.isCurrent() && concept.state() == Concept.State.PROPOSED
                        || lead.equals(Optional.of(concept.id())))
                .toList());
        int at = -1;
        for (int i = MOST_CONCEPTS; i < current.size(); i++) {
            at = lead.equals(Optional.of(current.get(i).id())) ? i : at;
        }
        if (at > 0) {
            current.add(MOST_CONCEPTS - 1, current.remove(at));
        }
        return current;
    }

    private JComponent button(Definition definition, Concept concept) {
        String gears = isNarrow()
                ? ""
                : concept.rings().size() + " × " + concept.cogs().size();
        ConceptTag tag = ConceptTag.of(
                ConceptSigns.of(definition, concept.id()), concept.id().text(), gears, words.locale());
        ConceptChooserButton button = new ConceptChooserButton(tag, () -> acts.lead(concept.id()));
        button.setName("lead." + concept.id());
        button.setToolTipText(concept.title());
        return button;
    }

    private JComponent more(Definition definition, List<Concept> rest) {
        ActionLink link = new ActionLink(words.text("lead.more", Integer.toString(rest.size())), () -> {
            JPopupMenu menu = new JPopupMenu();
            for (Concept concept : rest) {
                JMenuItem item = new JMenuItem(concept.id() + " " + concept.title());
                item.addActionListener(event -> acts.lead(concept.id()));
                menu.add(item);
            }
            menu.show(concepts, concepts.getWidth(), concepts.getHeight());
        });
        link.setName("lead.more");
        return link;
    }

    /** Shows what can be undone and done again. */
    void show(Optional<String> undo, Optional<String> redo) {
        steps.removeAll();
        ActionLink back =
                new ActionLink(undo.map(edit -> words.text("undo.edit", edit)).orElse(words.text("undo")), acts::undo);
        back.setEnabled(undo.isPresent());
        back.setName("undo");
        ActionLink again =
                new ActionLink(redo.map(edit -> words.text("redo.edit", edit)).orElse(words.text("redo")), acts::redo);
        again.setEnabled(redo.isPresent());
        again.setName("redo");
        steps.add(limited(back));
        steps.add(limited(again));
        revalidate();
        repaint();
    }

    /** Long names of edits are cut; the tip says them whole. */
    private static JComponent limited(ActionLink link) {
        Dimension size = link.getPreferredSize();
        link.setPreferredSize(new Dimension(Math.min(size.width, Metric.RAIL.px()), size.height));
        return link;
    }

    FindField find() {
        return find;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, Metric.TOP_BAR.px());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            drawing.level(0, drawing.width(), drawing.height() - 1, 1, Token.HAIRLINE);
        }
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.GROUND.colour();
    }

    /** Keeps the field at its own height in the middle of the bar, no wider than is useful. */
    private static final class FieldHolder extends JPanel {
        private final JComponent field;

        FieldHolder(JComponent field) {
            super(null);
            this.field = field;
            setOpaque(false);
            add(field);
        }

        @Override
        public void doLayout() {
            int most = Metric.WORKINGS.px();
            int height = Math.max(Metric.FIELD.px(), field.getPreferredSize().height);
            field.setBounds(0, (getHeight() - height) / 2, Math.min(most, getWidth()), height);
        }

        @Override
        public Dimension getPreferredSize() {
            return field.getPreferredSize();
        }
    }
}
