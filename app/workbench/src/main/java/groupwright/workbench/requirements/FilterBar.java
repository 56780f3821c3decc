package groupwright.workbench.requirements;

import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.workbench.components.Facets;
import groupwright.workbench.components.Mark;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Words;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.event.ActionEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Facets with counts, and fields to narrow and sort the list. In one line where there is room, else in two. */
final class FilterBar extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int INDENT = 13; // a facet has room for its focus ring around its text
    private static final int SEARCH_WIDTH = 168;

    private final transient Words words;
    private final transient Consumer<Filter> chosen;
    private final Facets facets;
    private final JPanel fields = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
    private final JTextField search = new JTextField();
    private final JComboBox<Choice<RecordId>> riders = new JComboBox<>();
    private final JComboBox<Choice<Requirement.Kind>> kinds = new JComboBox<>();
    private final JComboBox<Choice<Sorting>> sortings = new JComboBox<>();
    private transient Filter filter = Filter.NONE;
    private transient List<Facet> shown = List.of(Facet.ALL);
    private transient Refreshing refreshing = Refreshing.NO;

    /** Whether the fields change because something else did. */
    private enum Refreshing {
        YES,
        NO
    }

    /** One line of a list; nothing stands for all. */
    private record Choice<T>(Optional<T> value, String text) {
        @Override
        public String toString() {
            return text;
        }
    }

    FilterBar(Words words, Consumer<Filter> chosen) {
        super(null);
        this.words = words;
        this.chosen = chosen;
        setOpaque(false);
        setLayout(new OneOrTwoLines(OneOrTwoLines.Second.AT_THE_END, Look.pixels(INDENT), Look.pixels(INDENT)));
        facets = new Facets(List.of(facet(Facet.ALL, 0)), 0, index -> take(filter.with(shown.get(index))));
        add(facets);
        add(fields);
        fields.setOpaque(false);
        fillLists();
        name(search, "filter.words");
        name(riders, "filter.riders");
        name(kinds, "filter.kind");
        name(sortings, "filter.sorting");
        search.putClientProperty("JTextField.placeholderText", words.text("filter.words"));
        search.putClientProperty("JTextField.showClearButton", true);
        search.setPreferredSize(new Dimension(Look.pixels(SEARCH_WIDTH), Metric.FIELD.px()));
        List.of(search, riders, kinds, sortings).forEach(fields::add);
        listen();
    }

    private void name(javax.swing.JComponent field, String key) {
        field.getAccessibleContext().setAccessibleName(words.text(key));
        field.setToolTipText(words.text(key));
    }

    private void fillLists() {
        riders.addItem(new Choice<>(Optional.empty(), words.text("filter.allRiders")));
        kinds.addItem(new Choice<>(Optional.empty(), words.text("filter.allKinds")));
        Arrays.stream(Requirement.Kind.values())
                .map(kind -> new Choice<>(Optional.of(kind), words.text("kind." + kind.name())))
                .forEach(kinds::addItem);
        Arrays.stream(Sorting.values())
                .map(one -> new Choice<>(Optional.of(one), words.text("sorting." + one.name())))
                .forEach(sortings::addItem);
    }

    private void listen() {
        search.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                take(filter.withWords(search.getText()));
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                take(filter.withWords(search.getText()));
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                // attributes of plain text do not change
            }
        });
        search.getInputMap().put(KeyStroke.getKeyStroke("ESCAPE"), "clear");
        search.getActionMap().put("clear", new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                search.setText("");
            }
        });
        riders.addActionListener(event -> take(filter.withRiders(value(riders))));
        kinds.addActionListener(event -> take(filter.withKind(value(kinds))));
        sortings.addActionListener(event -> take(filter.with(value(sortings).orElse(Sorting.ID))));
    }

    private static <T> Optional<T> value(JComboBox<Choice<T>> list) {
        int at = list.getSelectedIndex();
        return at < 0 ? Optional.empty() : list.getItemAt(at).value();
    }

    private void take(Filter next) {
        if (refreshing == Refreshing.NO && !next.equals(filter)) {
            filter = next;
            chosen.accept(next);
        }
    }

    Filter filter() {
        return filter;
    }

    /** Shows counts, leaving out facets that hold nothing and need not be there, and the rider groups there are. */
    void show(Listing listing, List<RequirementsSheet.Group> groups) {
        refreshing = Refreshing.YES;
        shown = Arrays.stream(Facet.values())
                .filter(facet -> facet.isAlwaysShown() || listing.counts().get(facet) > 0 || facet == filter.facet())
                .toList();
        facets.show(
                shown.stream()
                        .map(facet -> facet(facet, listing.counts().get(facet)))
                        .toList(),
                shown.indexOf(filter.facet()));
        showGroups(groups);
        refreshing = Refreshing.NO;
    }

    private void showGroups(List<RequirementsSheet.Group> groups) {
        List<Choice<RecordId>> choices = new ArrayList<>(List.of(riders.getItemAt(0)));
        groups.forEach(group -> choices.add(new Choice<>(Optional.of(group.id()), group.text())));
        boolean same = riders.getItemCount() == choices.size()
                && java.util.stream.IntStream.range(0, choices.size())
                        .allMatch(i -> riders.getItemAt(i).equals(choices.get(i)));
        if (!same) {
            riders.removeAllItems();
            choices.forEach(riders::addItem);
        }
        choices.stream()
                .filter(choice -> choice.value().equals(filter.riders()))
                .findFirst()
                .ifPresent(riders::setSelectedItem);
    }

    /** Shows all again; the order stays. */
    void clear() {
        clear(Facet.ALL);
    }

    /** Shows all that a requirement is among; the order stays. */
    void clear(Listed wanted) {
        clear(wanted.facets().contains(Facet.ALL) ? Facet.ALL : Facet.RETIRED);
    }

    private void clear(Facet facet) {
        Filter all = Filter.NONE.with(facet).with(filter.sorting());
        refreshing = Refreshing.YES;
        search.setText("");
        riders.setSelectedIndex(0);
        kinds.setSelectedIndex(0);
        refreshing = Refreshing.NO;
        take(all);
    }

    private groupwright.workbench.components.Facet facet(Facet facet, int count) {
        Optional<Mark> mark = switch (facet) {
            case MISSES -> Optional.of(Mark.MISSES);
            case TOO_CLOSE -> Optional.of(Mark.CLOSE);
            case MISSING_INPUT -> Optional.of(Mark.MISSING);
            case CHANGED -> Optional.of(Mark.CHANGED);
            case ALL, NOT_MEASURABLE, DRAFT, PARKED, RETIRED -> Optional.empty();
        };
        return new groupwright.workbench.components.Facet(words.text("facet." + facet.name()), count, mark);
    }

    Facets facets() {
        return facets;
    }

    JTextField search() {
        return search;
    }
}
