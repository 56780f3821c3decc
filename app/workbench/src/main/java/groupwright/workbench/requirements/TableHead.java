package groupwright.workbench.requirements;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.PaintedCell;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.Component;
import java.awt.Dimension;
import javax.swing.JTable;
import javax.swing.UIManager;
import javax.swing.table.TableCellRenderer;

/** The head of the table: words over their columns, and the scale of the bars. */
final class TableHead implements Painter<TableHead.Title> {
    /** One head. */
    record Title(Column column, String word, double unitRoom, String less, String more) {}

    private static final double WIDE_ENOUGH = 132;
    private static final double END_GAP = 6;

    private TableHead() {}

    static void dress(RequirementsTable table, Words words, String valueHead) {
        for (Column column : Column.values()) {
            double unitRoom = column == Column.TARGET
                    ? table.widths().targetUnit()
                    : column == Column.VALUE ? table.widths().valueUnit() : 0;
            String word = column == Column.VALUE && !valueHead.isEmpty() ? valueHead : words.text(column.key());
            var at = table.getColumnModel().getColumn(column.ordinal());
            at.setHeaderValue(new Title(column, word, unitRoom, words.text("head.less"), words.text("head.more")));
            at.setHeaderRenderer(new OnGround(new PaintedCell<>(Title.class, new TableHead(), column.padding())));
        }
        table.getTableHeader().resizeAndRepaint();
    }

    /** The cell of a head stands on the ground of heads. */
    private record OnGround(PaintedCell<Title> cell) implements TableCellRenderer {
        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            Component component = cell.getTableCellRendererComponent(table, value, false, false, row, column);
            component.setPreferredSize(new Dimension(0, Metric.TABLE_HEAD.px()));
            component.setBackground(UIManager.getColor("TableHeader.background"));
            return component;
        }
    }

    @Override
    public Extent extent(Title title) {
        return new Extent(Type.SECONDARY.width(title.word(), Weight.REGULAR), 0, -1);
    }

    @Override
    public void paint(Drawing drawing, Title title) {
        double baseline = Type.SECONDARY.baseline(drawing.height() / 2);
        switch (title.column()) {
            case TARGET, VALUE ->
                drawing.textUpTo(
                        title.word(),
                        drawing.width() - title.unitRoom(),
                        baseline,
                        Type.SECONDARY,
                        title.column() == Column.VALUE ? Weight.STRONG : Weight.REGULAR,
                        Token.INK);
            case MARGIN ->
                drawing.textUpTo(title.word(), drawing.width(), baseline, Type.SECONDARY, Weight.REGULAR, Token.INK);
            case BAR -> paintScale(drawing, title, baseline);
            default -> drawing.text(title.word(), 0, baseline, Type.SECONDARY, Weight.REGULAR, Token.INK);
        }
    }

    private static void paintScale(Drawing drawing, Title title, double baseline) {
        double middle = Math.floor(drawing.width() / 2);
        drawing.upright(middle, drawing.height() - 4, drawing.height(), 1, Token.INK);
        String less = fitting(title.less(), middle);
        String more = fitting(title.more(), middle);
        drawing.text(less, 0, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
        drawing.textUpTo(more, drawing.width(), baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
        if (drawing.width() >= WIDE_ENOUGH) {
            double width = Type.CAPTION.width(title.word(), Weight.STRONG);
            drawing.text(title.word(), middle - width / 2, baseline, Type.CAPTION, Weight.STRONG, Token.INK);
        }
    }

    /** Without the unit where there is little room. */
    private static String fitting(String end, double room) {
        int unit = end.indexOf('\u202F');
        return unit < 0 || Type.CAPTION.width(end, Weight.REGULAR) + END_GAP <= room ? end : end.substring(0, unit);
    }

    @Override
    public String name(Title title) {
        return title.word();
    }
}
