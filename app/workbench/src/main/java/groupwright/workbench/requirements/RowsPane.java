package groupwright.workbench.requirements;

import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;

/** The table with its selection, which follows the requirement and criterion, not the position. */
final class RowsPane extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final transient Consumer<Listing.Line> inSight;
    private final transient Consumer<Listing.Line> selected;
    private final transient Consumer<Listing.Line> act;
    private final RequirementsTable table;
    private final JScrollPane scroll;
    private transient Optional<Key> key = Optional.empty();
    private transient Selecting selecting = Selecting.BY_THE_USER;

    /** What a row is about. */
    private record Key(RecordId requirement, String criterion) {
        static Key of(Listing.Line line) {
            return new Key(line.listed().id(), line.row().criterion());
        }
    }

    private enum Selecting {
        BY_THE_USER,
        RESTORED
    }

    /**
     * @param inSight told each line that is in sight, whoever selected it
     * @param selected told each line that the user selected
     * @param act does what a line offers
     */
    RowsPane(
            Bench bench,
            Words words,
            Consumer<Listing.Line> inSight,
            Consumer<Listing.Line> selected,
            Consumer<Listing.Line> act) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.inSight = inSight;
        this.selected = selected;
        this.act = act;
        this.table = new RequirementsTable(words);
        this.scroll = new JScrollPane(table);
        scroll.setColumnHeaderView(table.getTableHeader());
        scroll.setBorder(BorderFactory.createMatteBorder(
                0, 0, groupwright.workbench.look.Look.pixels(1), 0, Token.EDGE.colour()));
        setOpaque(false);
        setMinimumSize(new java.awt.Dimension(0, groupwright.workbench.look.Metric.ROW.px() * 4));
        add(scroll);
        listen();
    }

    private void listen() {
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!event.getValueIsAdjusting() && selecting == Selecting.BY_THE_USER) {
                chosen();
            }
        });
        MouseAdapter mouse = new Mouse();
        table.addMouseListener(mouse);
        table.addMouseMotionListener(mouse);
        bind("ENTER", "act", () -> current().ifPresent(act));
        bind("F2", "edit", () -> current().ifPresent(act));
        bind("ctrl C", "copyFigure", this::copy);
        bind("meta C", "copyFigure", this::copy);
    }

    private void bind(String stroke, String name, Runnable done) {
        table.getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke(stroke), name);
        table.getActionMap().put(name, new AbstractAction() {
            private static final long serialVersionUID = 1L;

            @Override
            public void actionPerformed(ActionEvent event) {
                done.run();
            }
        });
    }

    private Optional<Listing.Line> current() {
        return table.line(table.getSelectedRow());
    }

    private void chosen() {
        current().ifPresent(line -> {
            key = Optional.of(Key.of(line));
            inSight.accept(line);
            selected.accept(line);
            table.repaint();
        });
    }

    /** Copies value, unit and figure of the selected row. */
    private void copy() {
        if (current().isPresent()
                && table.getValueAt(table.getSelectedRow(), Column.VALUE.ordinal()) instanceof Cell.Amount amount
                && !amount.chip().copy().isEmpty()) {
            Toolkit.getDefaultToolkit()
                    .getSystemClipboard()
                    .setContents(new StringSelection(amount.chip().copy()), null);
        }
    }

    RequirementsTable table() {
        return table;
    }

    /** Shows lines, or what stands in their place; the selection stays with its requirement, else goes to the first. */
    void show(Listing listing, Since since, String valueHead, Optional<JComponent> instead) {
        Widths widths = Widths.of(
                listing,
                List.of(words.text("target.atLeast"), words.text("target.atMost"), words.text("target.between")),
                Arrays.stream(groupwright.workbench.components.Mark.values())
                        .map(mark -> mark.word(words.locale()))
                        .toList(),
                words.text("value.missing"),
                words.text("head.MARGIN"));
        selecting = Selecting.RESTORED;
        int column = Math.max(0, table.getColumnModel().getSelectionModel().getLeadSelectionIndex());
        table.show(listing, new Cells(words, since, bench::selected, widths), valueHead);
        scroll.setViewportView(instead.isPresent() ? instead.get() : table);
        scroll.setColumnHeaderView(instead.isPresent() ? null : table.getTableHeader());
        scroll.getViewport().setBackground((instead.isPresent() ? Token.SURFACE : Token.RAISED).colour());
        int row = rowOf(key).orElse(listing.lines().isEmpty() ? -1 : 0);
        if (row >= 0) {
            table.changeSelection(row, column, false, false);
        }
        selecting = Selecting.BY_THE_USER;
        current().filter(line -> !key.equals(Optional.of(Key.of(line)))).ifPresent(line -> {
            key = Optional.of(Key.of(line));
            inSight.accept(line);
        });
    }

    private Optional<Integer> rowOf(Optional<Key> wanted) {
        return wanted.flatMap(one -> find(line -> Key.of(line).equals(one))
                .or(() -> find(line -> line.listed().id().equals(one.requirement()))));
    }

    private Optional<Integer> find(java.util.function.Predicate<Listing.Line> fits) {
        for (int i = 0; i < table.lines().size(); i++) {
            if (fits.test(table.lines().get(i))) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    /** Whether a requirement is in sight. */
    boolean has(RecordId id) {
        return find(line -> line.listed().id().equals(id)).isPresent();
    }

    /** Selects the first row of a requirement and brings it into sight. */
    void select(RecordId id) {
        find(line -> line.listed().id().equals(id)).ifPresent(row -> {
            table.changeSelection(row, Column.TITLE.ordinal(), false, false);
            chosen();
        });
    }

    /** A click on a step does it, a second click on a row opens its form; over what can be clicked the pointer is a hand. */
    private final class Mouse extends MouseAdapter {
        @Override
        public void mouseClicked(MouseEvent event) {
            boolean twice = event.getClickCount() == 2;
            if (twice || isStep(event.getPoint())) {
                current().ifPresent(act);
            } else if (at(event.getPoint())
                    .filter(Cell.Amount.class::isInstance)
                    .isPresent()) {
                current().ifPresent(selected);
                table.repaint();
            }
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            boolean alive = isStep(event.getPoint())
                    || at(event.getPoint())
                            .filter(Cell.Amount.class::isInstance)
                            .isPresent();
            table.setCursor(Cursor.getPredefinedCursor(alive ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        }

        private Optional<Object> at(Point point) {
            int row = table.rowAtPoint(point);
            int column = table.columnAtPoint(point);
            return row < 0 || column < 0 ? Optional.empty() : Optional.of(table.getValueAt(row, column));
        }

        private boolean isStep(Point point) {
            return table.line(table.rowAtPoint(point))
                            .filter(line -> line.row() instanceof Row.Note)
                            .isPresent()
                    && table.columnAtPoint(point) == Column.VERDICT.ordinal();
        }
    }
}
