package groupwright.workbench.concepts;

import groupwright.definition.figure.MissingInput;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.lists.FixedTable;
import groupwright.workbench.lists.Keys;
import groupwright.workbench.lists.Sideways;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.datatransfer.StringSelection;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/**
 * Figures of all concepts side by side: what is asked stays at the left, the concepts scroll. Enter opens a figure in
 * Workings, F2 the field that is missing; at the left Enter opens the requirement.
 */
final class Comparison extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient Bench bench;
    private final transient Words words;
    private final FixedTable left = new FixedTable(Widths.GAP, Metric.TABLE_HEAD.px(), Metric.CLOSE_ROW.px());
    private final ConceptTable concepts = new ConceptTable();
    private final Sideways pane = new Sideways(concepts);
    private transient Optional<ConceptsSheet> sheet = Optional.empty();
    private int laidOutFor = -1;

    Comparison(Bench bench, Words words) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        setOpaque(false);
        left.getAccessibleContext().setAccessibleName(words.text("comparison.left"));
        concepts.getAccessibleContext().setAccessibleName(words.text("comparison.name"));
        concepts.setName("comparison");
        left.setName("asked");
        pane.setRowHeaderView(left);
        pane.setColumnHeaderView(concepts.getTableHeader());
        pane.setCorner(JScrollPane.UPPER_LEADING_CORNER, left.getTableHeader());
        JPanel beyond = new JPanel();
        beyond.setBackground(Token.GROUND.colour());
        pane.setCorner(JScrollPane.UPPER_TRAILING_CORNER, beyond);
        pane.getViewport().setOpaque(true);
        pane.getViewport().setBackground(Token.RAISED.colour());
        pane.getRowHeader().setBackground(Token.RAISED.colour());
        add(pane);
        bindKeys();
    }

    private void bindKeys() {
        press(concepts, this::select);
        press(left, this::openRequirement);
        Keys.bindInside(concepts, "F2", this::openMissing);
        Keys.bindInside(concepts, "ctrl C", this::copy);
        Keys.bindInside(concepts, "meta C", this::copy);
    }

    private static void press(FixedTable table, Runnable pressed) {
        Keys.bindInside(table, "ENTER", pressed);
        Keys.bindInside(table, "SPACE", pressed);
        Keys.bindInside(table, "TAB", () -> table.transferFocus());
        Keys.bindInside(table, "shift TAB", () -> table.transferFocusBackward());
        table.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent clicked) {
                if (table.rowAtPoint(clicked.getPoint()) >= 0) {
                    pressed.run();
                }
            }
        });
    }

    private Optional<ConceptsSheet.Cell> here() {
        int row = concepts.getSelectedRow();
        int column = concepts.getSelectedColumn();
        return sheet.filter(
                        shown -> row >= 0 && column >= 0 && row < shown.rows().size())
                .map(shown -> shown.rows().get(row).cells().get(column));
    }

    private void select() {
        here().ifPresent(cell -> {
            cell.ask().ifPresentOrElse(bench::select, this::openMissing);
            concepts.repaint();
        });
    }

    private void openMissing() {
        here().flatMap(ConceptsSheet.Cell::lacks).map(MissingInput::address).ifPresent(bench::open);
    }

    private void copy() {
        here().ifPresent(cell -> getToolkit().getSystemClipboard().setContents(new StringSelection(cell.copy()), null));
    }

    private void openRequirement() {
        int row = left.getSelectedRow();
        sheet.filter(shown -> row >= 0 && row < shown.rows().size())
                .flatMap(shown -> shown.rows().get(row).requirement())
                .map((RecordId id) -> Address.of(id))
                .ifPresent(bench::open);
    }

    /** Shows other figures. */
    void show(ConceptsSheet next) {
        sheet = Optional.of(next);
        fill();
    }

    private void fill() {
        sheet.ifPresent(shown -> {
            Widths widths = Widths.of(shown, getWidth() / Look.scale());
            Contents contents = new Contents(shown, widths, bench, words);
            double[] asked = {widths.figure() + 2 * Widths.GAP, widths.target() + Widths.GAP};
            left.fill(new FixedTable.Filling(
                    contents.rows(),
                    asked,
                    column -> column == 0 ? contents.figureHead() : contents.targetHead(),
                    (row, column) -> column == 0 ? contents.figure(row) : contents.target(row)));
            concepts.fill(contents);
            left.setPreferredScrollableViewportSize(left.getPreferredSize());
            pane.getRowHeader().setPreferredSize(new Dimension(Look.pixels(asked[0] + asked[1]), 0));
            revalidate();
            repaint();
        });
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

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            drawing.box(0, 0, drawing.width(), Metric.TABLE_HEAD.units(), Token.GROUND);
        }
    }

    JComponent left() {
        return left;
    }

    ConceptTable concepts() {
        return concepts;
    }
}
