package groupwright.workbench.lists;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Type;

/** Paints texts of cells in one line, cut with "…" where there is no room. */
public enum CellTextPainter implements Painter<CellText> {
    PLAIN;

    private static final double HEIGHT = 18;
    private static final double UNDER = 3;
    private static final double THROUGH = 4;

    @Override
    public Extent extent(CellText cell) {
        return new Extent(Type.TABLE.width(cell.text(), cell.weight()), HEIGHT, Type.TABLE.baseline(HEIGHT / 2));
    }

    @Override
    public void paint(Drawing drawing, CellText cell) {
        if (cell.text().isEmpty()) {
            return;
        }
        String shown = Type.TABLE.cut(cell.text(), cell.weight(), drawing.width() + 1);
        double baseline = Type.TABLE.baseline(drawing.height() / 2);
        drawing.text(shown, 0, baseline, Type.TABLE, cell.weight(), cell.colour());
        double end = Type.TABLE.width(shown, cell.weight());
        switch (cell.line()) {
            case UNDER -> drawing.level(0, end, baseline + UNDER, 1, cell.colour());
            case THROUGH -> drawing.level(0, end, baseline - THROUGH, 1, cell.colour());
            case NONE -> {
                // the text alone
            }
        }
    }

    @Override
    public String name(CellText cell) {
        return cell.text();
    }
}
