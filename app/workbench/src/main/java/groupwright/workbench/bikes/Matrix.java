package groupwright.workbench.bikes;

import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.lists.FixedTable;
import groupwright.workbench.lists.Keys;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.StringSelection;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.event.ListSelectionEvent;

/**
 * Bikes down, concepts across: bikes stay at the left and heads above, the rest scrolls. Enter opens all checks of a cell or
 * the form of a bike, F2 the field that is missing.
 */
final class Matrix extends JPanel {
    private static final long serialVersionUID = 1L;

    /** What the matrix asks for. */
    interface Asked {
        /** The bike that is to be drawn. */
        void draw(RecordId bike);

        /** The checks of a concept on a bike. */
        void check(Pair pair);

        /** All fields of a bike. */
        void form(RecordId bike);

        /** Nothing but the drawing. */
        void close();
    }

    private final transient Bench bench;
    private final transient Words words;
    private final transient Asked asked;
    private final FixedTable bikes = table();
    private final FixedTable concepts = table();
    private final JScrollPane pane = new JScrollPane(concepts);
    private transient Optional<Contents> contents = Optional.empty();
    private transient BikesSheet sheet = BikesSheet.NOTHING;
    private int laidOutFor = -1;
    private boolean quiet;

    Matrix(Bench bench, Words words, Asked asked) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.asked = asked;
        setOpaque(false);
        bikes.setName("bikes.list");
        bikes.getAccessibleContext().setAccessibleName(words.text("matrix.bikes"));
        concepts.setName("bikes.matrix");
        concepts.getAccessibleContext().setAccessibleName(words.text("matrix.name"));
        concepts.setSelectionModel(bikes.getSelectionModel()); // one row at a time, whichever half one is in
        bikes.getSelectionModel().addListSelectionListener(this::moved);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.setRowHeaderView(bikes);
        pane.setColumnHeaderView(concepts.getTableHeader());
        pane.setCorner(JScrollPane.UPPER_LEADING_CORNER, bikes.getTableHeader());
        JPanel beyond = new JPanel();
        beyond.setBackground(Token.GROUND.colour());
        pane.setCorner(JScrollPane.UPPER_TRAILING_CORNER, beyond);
        pane.getViewport().setBackground(Token.RAISED.colour());
        pane.getRowHeader().setBackground(Token.RAISED.colour());
        pane.getVerticalScrollBar().setUnitIncrement(Look.pixels(Measures.ROW / 2));
        add(pane);
        press(concepts, this::openCell, this::cellZones);
        press(bikes, this::openBike, this::bikeZones);
        Keys.bindInside(this, "ESCAPE", asked::close);
        Keys.bindInside(concepts, "F2", this::openMissing);
        Keys.bindInside(bikes, "F2", () -> bikeZones(bikes.getSelectedRow(), 0).forEach(this::follow));
        Keys.bindInside(concepts, "ctrl C", this::copy);
        Keys.bindInside(concepts, "meta C", this::copy);
    }

    private static FixedTable table() {
        return new FixedTable(0, Look.pixels(Measures.HEAD), Look.pixels(Measures.ROW));
    }

    /** What leads somewhere in a cell. */
    private interface Zones {
        List<Zone> of(int row, int column);
    }

    private void press(FixedTable table, Runnable opened, Zones zones) {
        Keys.bindInside(table, "ENTER", opened);
        Keys.bindInside(table, "SPACE", opened);
        Keys.bindInside(table, "TAB", () -> table.transferFocus());
        Keys.bindInside(table, "shift TAB", () -> table.transferFocusBackward());
        MouseAdapter mouse = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent clicked) {
                if (table.rowAtPoint(clicked.getPoint()) >= 0) {
                    zoneAt(table, zones, clicked.getPoint()).ifPresentOrElse(Matrix.this::follow, opened);
                }
            }

            @Override
            public void mouseMoved(MouseEvent moved) {
                boolean leads = zoneAt(table, zones, moved.getPoint()).isPresent();
                table.setCursor(Cursor.getPredefinedCursor(leads ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
            }
        };
        table.addMouseListener(mouse);
        table.addMouseMotionListener(mouse);
    }

    private static Optional<Zone> zoneAt(FixedTable table, Zones zones, Point at) {
        int row = table.rowAtPoint(at);
        int column = table.columnAtPoint(at);
        if (row < 0 || column < 0) {
            return Optional.empty();
        }
        Rectangle cell = table.getCellRect(row, column, false);
        double x = (at.x - cell.x) / Look.scale();
        double y = (at.y - cell.y) / Look.scale();
        return zones.of(row, column).stream()
                .filter(zone -> zone.room().contains(x, y))
                .findFirst();
    }

    private void follow(Zone zone) {
        zone.ask().ifPresent(ask -> {
            bench.select(ask);
            concepts.repaint();
        });
        zone.field().ifPresent(bench::open);
    }

    private List<Zone> cellZones(int row, int column) {
        return contents.filter(shown -> !shown.isLast(row))
                .map(shown -> shown.conceptCell(row, column).zones())
                .orElse(List.of());
    }

    private List<Zone> bikeZones(int row, int column) {
        return contents.filter(shown -> row >= 0 && !shown.isLast(row))
                .map(shown -> shown.bikeCell(row).zones())
                .orElse(List.of());
    }

    private Optional<BikesSheet.Row> rowHere() {
        int row = bikes.getSelectedRow();
        return row >= 0 && row < sheet.rows().size() ? Optional.of(sheet.rows().get(row)) : Optional.empty();
    }

    private Optional<BikesSheet.Cell> cellHere() {
        int column = concepts.getSelectedColumn();
        return rowHere()
                .filter(row -> column >= 0 && column < row.cells().size())
                .map(row -> row.cells().get(column));
    }

    private void moved(ListSelectionEvent event) {
        if (!quiet && !event.getValueIsAdjusting()) {
            rowHere().map(BikesSheet.Row::id).ifPresent(asked::draw);
        }
    }

    private void openCell() {
        cellHere().map(BikesSheet.Cell::pair).ifPresent(asked::check);
    }

    private void openBike() {
        rowHere().map(BikesSheet.Row::id).ifPresent(asked::form);
    }

    private void openMissing() {
        cellHere()
                .flatMap(cell -> cell.fits().missing().stream().findFirst())
                .map(input -> input.address())
                .ifPresent((Address address) -> bench.open(address));
    }

    private void copy() {
        if (contents.isPresent() && cellHere().isPresent()) {
            contents.get()
                    .conceptCell(bikes.getSelectedRow(), concepts.getSelectedColumn())
                    .first()
                    .ifPresent(number ->
                            getToolkit().getSystemClipboard().setContents(new StringSelection(number.copy()), null));
        }
    }

    /** Shows other bikes and concepts. */
    void show(BikesSheet next) {
        sheet = next;
        fill();
    }

    private void fill() {
        quiet = true;
        List<String> heads = Contents.measureHeads(words);
        Measures measures = Measures.of(sheet, heads, room());
        Contents shown = new Contents(sheet, measures, bench, words);
        contents = Optional.of(shown);
        bikes.fill(new FixedTable.Filling(
                shown.rows(),
                new double[] {measures.bike()},
                column -> shown.bikesHead(),
                (row, column) -> shown.bike(row)));
        double[] widths = new double[sheet.concepts().size()];
        java.util.Arrays.fill(widths, measures.concept());
        concepts.fill(new FixedTable.Filling(shown.rows(), widths, shown::conceptHead, shown::concept));
        bikes.setRowHeight(shown.rows() - 1, Look.pixels(Measures.FOOT));
        concepts.setRowHeight(shown.rows() - 1, Look.pixels(Measures.FOOT));
        bikes.setPreferredScrollableViewportSize(bikes.getPreferredSize());
        pane.getRowHeader().setPreferredSize(new Dimension(Look.pixels(measures.bike()), 0));
        quiet = false;
        revalidate();
        repaint();
    }

    /** Beside the bar at the right, which comes and goes with the height. */
    private double room() {
        return (getWidth() - pane.getVerticalScrollBar().getPreferredSize().width) / Look.scale();
    }

    /** As high as all its rows are. */
    @Override
    public Dimension getPreferredSize() {
        int below = pane.getHorizontalScrollBar().isVisible()
                ? pane.getHorizontalScrollBar().getPreferredSize().height
                : 0;
        return new Dimension(
                Look.pixels(Measures.ROW), Look.pixels(Measures.HEAD) + bikes.getPreferredSize().height + below);
    }

    /** Selects the row of a bike, and brings it into sight; nobody is told. */
    void select(RecordId bike) {
        for (int i = 0; i < sheet.rows().size(); i++) {
            if (sheet.rows().get(i).id().equals(bike)) {
                quiet = true;
                bikes.changeSelection(i, 0, false, false);
                quiet = false;
            }
        }
    }

    /** Brings the selected row into sight. */
    void toSight() {
        int row = bikes.getSelectedRow();
        if (row >= 0) {
            concepts.scrollRectToVisible(concepts.getCellRect(row, Math.max(0, concepts.getSelectedColumn()), true));
        }
    }

    /** Columns share the room there is. */
    @Override
    public void setBounds(int x, int y, int width, int height) {
        super.setBounds(x, y, width, height);
        if (width != laidOutFor) {
            laidOutFor = width;
            fill();
        }
    }

    FixedTable bikes() {
        return bikes;
    }

    FixedTable concepts() {
        return concepts;
    }
}
