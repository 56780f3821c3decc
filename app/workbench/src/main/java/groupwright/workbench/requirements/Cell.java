package groupwright.workbench.requirements;

import groupwright.workbench.components.Bar;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.ChipPainter;
import groupwright.workbench.components.CriterionBar;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Ladder;
import groupwright.workbench.components.LadderMark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** What stands in one cell of the table, ready to be painted. */
sealed interface Cell {
    /** The least room it wants. */
    Extent extent();

    void paint(Drawing drawing);

    /** What it says, for those who do not see it. */
    String name();

    /** Paints cells of all sorts. */
    Painter<Cell> PAINTER = new Painter<>() {
        @Override
        public Extent extent(Cell cell) {
            return cell.extent();
        }

        @Override
        public void paint(Drawing drawing, Cell cell) {
            cell.paint(drawing);
        }

        @Override
        public String name(Cell cell) {
            return cell.name();
        }
    };

    private static Extent line(double width) {
        return new Extent(width, Metric.ROW.units(), -1);
    }

    /** A text; cut with "…" where it does not fit. */
    record Words(String text, Weight weight, Token colour, String name) implements Cell {
        @Override
        public Extent extent() {
            return line(Type.TABLE.width(text, weight));
        }

        @Override
        public void paint(Drawing drawing) {
            drawing.text(
                    Type.TABLE.cut(text, weight, drawing.width()),
                    0,
                    Type.TABLE.baseline(drawing.height() / 2),
                    Type.TABLE,
                    weight,
                    colour);
        }
    }

    /** A number without unit, never cut. */
    record Number(String text, String name) implements Cell {
        @Override
        public Extent extent() {
            return line(Type.TABLE.width(text, Weight.REGULAR));
        }

        @Override
        public void paint(Drawing drawing) {
            drawing.textUpTo(
                    text,
                    drawing.width(),
                    Type.TABLE.baseline(drawing.height() / 2),
                    Type.TABLE,
                    Weight.REGULAR,
                    Token.INK);
        }
    }

    /**
     * A figure and in muted what it is asked of.
     *
     * @param whereAt where the second begins, unless the first is longer
     */
    record Figure(String figure, String where, double whereAt, String name) implements Cell {
        private static final double GAP = 8;
        private static final double ROOM_OF_WHERE = 64;

        @Override
        public Extent extent() {
            double own = Type.TABLE.width(figure, Weight.REGULAR);
            return line(where.isEmpty() ? own : own + GAP + Type.TABLE.width(where, Weight.REGULAR));
        }

        /** In a column of its own where there is room for it, else right behind the figure. */
        private double start(double room) {
            double behind = Type.TABLE.width(figure, Weight.REGULAR) + GAP;
            return room < whereAt + ROOM_OF_WHERE ? behind : Math.max(whereAt, behind);
        }

        @Override
        public void paint(Drawing drawing) {
            double baseline = Type.TABLE.baseline(drawing.height() / 2);
            String shown = Type.TABLE.cut(figure, Weight.REGULAR, drawing.width());
            drawing.text(shown, 0, baseline, Type.TABLE, Weight.REGULAR, Token.INK);
            double start = start(drawing.width());
            double room = drawing.width() - start;
            if (!where.isEmpty() && room > GAP) {
                String rest = Type.TABLE.cut(where, Weight.REGULAR, room);
                drawing.text(rest, start, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED);
            }
        }
    }

    /**
     * A number with its unit, and in muted in front whether it is a least or a most.
     *
     * @param unitRoom width of the column of units
     */
    record Amount(String comparator, Chip chip, double unitRoom) implements Cell {
        private static final double OVERHANG = 4;

        @Override
        public Extent extent() {
            return line(Type.TABLE.width(comparator, Weight.REGULAR)
                    + 2 * OVERHANG
                    + chip.type().width(chip.number(), chip.weight())
                    + unitRoom);
        }

        @Override
        public void paint(Drawing drawing) {
            double baseline = Type.TABLE.baseline(drawing.height() / 2);
            drawing.text(comparator, 0, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED);
            double room = Math.max(unitRoom, Widths.unitRoom(chip.unit()));
            double width = drawing.width() - room + Metric.UNIT_COLUMN.units();
            try (Drawing part = drawing.part(0, 0, width, drawing.height())) {
                ChipPainter.IN_COLUMN.paint(part, chip);
            }
        }

        @Override
        public String name() {
            return comparator.isEmpty() ? chip.name() : comparator + " " + chip.number() + " " + chip.unit();
        }
    }

    /** How far the requirement has come. */
    record Climbed(Ladder ladder) implements Cell {
        @Override
        public Extent extent() {
            return LadderMark.IN_ROW.extent(ladder);
        }

        @Override
        public void paint(Drawing drawing) {
            LadderMark.IN_ROW.paint(drawing, ladder);
        }

        @Override
        public String name() {
            return ladder.name();
        }
    }

    /** From the target to the value. */
    record Reach(Bar bar) implements Cell {
        @Override
        public Extent extent() {
            return CriterionBar.IN_ROW.extent(bar);
        }

        @Override
        public void paint(Drawing drawing) {
            CriterionBar.IN_ROW.paint(drawing, bar);
        }

        @Override
        public String name() {
            return bar.name();
        }
    }

    /** A verdict. */
    record Judged(Marked marked, String name) implements Cell {
        private static final MarkedPainter PAINTER = new MarkedPainter(Type.TABLE);

        @Override
        public Extent extent() {
            return PAINTER.extent(marked);
        }

        @Override
        public void paint(Drawing drawing) {
            PAINTER.paint(drawing, marked);
        }
    }

    /** Nothing. */
    record Empty() implements Cell {
        @Override
        public Extent extent() {
            return line(0);
        }

        @Override
        public void paint(Drawing drawing) {
            // an empty cell shows nothing
        }

        @Override
        public String name() {
            return "";
        }
    }
}
