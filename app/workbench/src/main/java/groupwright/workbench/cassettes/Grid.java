package groupwright.workbench.cassettes;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Words and numbers in columns that are as wide as they need to be.
 *
 * @param rows each as long as the first
 */
record Grid(List<List<Cell>> rows) {
    /** At which edge of its column a text stands. */
    enum Edge {
        LEFT,
        RIGHT
    }

    /** One text. */
    record Cell(String text, Edge edge, Weight weight, Token colour) {
        static Cell text(String text) {
            return new Cell(text, Edge.LEFT, Weight.REGULAR, Token.INK);
        }

        static Cell muted(String text) {
            return new Cell(text, Edge.LEFT, Weight.REGULAR, Token.MUTED);
        }

        static Cell number(String text) {
            return new Cell(text, Edge.RIGHT, Weight.REGULAR, Token.INK);
        }

        Cell strong() {
            return new Cell(text, edge, Weight.STRONG, colour);
        }
    }

    Grid {
        rows = rows.stream().map(List::copyOf).toList();
    }

    private double width(int column) {
        return rows.stream()
                .mapToDouble(row -> Type.SECONDARY.width(
                        row.get(column).text(), row.get(column).weight()))
                .max()
                .orElse(0);
    }

    private int columns() {
        return rows.isEmpty() ? 0 : rows.get(0).size();
    }

    /** Paints it. */
    enum Painting implements Painter<Grid> {
        PLAIN;

        private static final double LINE = 20;
        private static final double GAP = 14;

        @Override
        public Extent extent(Grid grid) {
            double width = 0;
            for (int i = 0; i < grid.columns(); i++) {
                width += grid.width(i) + (i > 0 ? GAP : 0);
            }
            return new Extent(width, LINE * grid.rows().size(), -1);
        }

        @Override
        public void paint(Drawing drawing, Grid grid) {
            double x = 0;
            for (int column = 0; column < grid.columns(); column++) {
                double width = grid.width(column);
                for (int row = 0; row < grid.rows().size(); row++) {
                    Cell cell = grid.rows().get(row).get(column);
                    double baseline = Type.SECONDARY.baseline(LINE * row + LINE / 2);
                    if (cell.edge() == Edge.RIGHT) {
                        drawing.textUpTo(
                                cell.text(), x + width, baseline, Type.SECONDARY, cell.weight(), cell.colour());
                    } else {
                        drawing.text(cell.text(), x, baseline, Type.SECONDARY, cell.weight(), cell.colour());
                    }
                }
                x += width + GAP;
            }
        }

        @Override
        public String name(Grid grid) {
            return grid.rows().stream()
                    .map(row -> row.stream()
                            .map(Cell::text)
                            .filter(text -> !text.isEmpty())
                            .collect(Collectors.joining(" ")))
                    .collect(Collectors.joining("; "));
        }
    }
}
