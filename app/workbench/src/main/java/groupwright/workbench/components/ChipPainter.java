package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** Paints figure chips: number, muted unit, and below them the dimension line. */
public enum ChipPainter implements Painter<Chip> {
    /** Just as wide as it needs to be, at the left. */
    ALONE,
    /** In a table: the number ends where the column of units begins, which is at the right. */
    IN_COLUMN;

    /** The line is wider than the number by this on both sides. */
    static final double OVERHANG = 4;

    private static final double LINE_BELOW_BASELINE = 5;
    private static final double BELOW_LINE = 5;
    private static final double GAP = 3;
    private static final double GAP_AT_NUMBER = 6;
    private static final double PATCH_BELOW_BASELINE = 4;
    private static final double ABOVE_CAPITALS = 0.36;

    /** Where the parts of one chip stand. */
    private record Places(double left, double unitX, double right, double baseline) {}

    @Override
    public Extent extent(Chip chip) {
        double number = chip.type().width(chip.number(), chip.weight());
        double units = this == IN_COLUMN ? Metric.UNIT_COLUMN.units() : gap(chip) + unitWidth(chip) + OVERHANG;
        double baseline = Math.ceil(chip.type().size() + 1);
        return new Extent(OVERHANG + number + units, baseline + LINE_BELOW_BASELINE + BELOW_LINE, baseline);
    }

    private static double gap(Chip chip) {
        if (chip.unit().isEmpty() || chip.unit().startsWith("°")) {
            return 0;
        }
        return chip.type() == Type.NUMBER ? GAP_AT_NUMBER : GAP;
    }

    private static double unitWidth(Chip chip) {
        return Type.CAPTION.width(chip.unit(), Weight.REGULAR);
    }

    private Places places(Drawing drawing, Chip chip) {
        double number = chip.type().width(chip.number(), chip.weight());
        if (this == IN_COLUMN) {
            double end = drawing.width() - Metric.UNIT_COLUMN.units();
            double unitX = end + gap(chip);
            return new Places(
                    end - number, unitX, unitX + unitWidth(chip), chip.type().baseline(drawing.height() / 2));
        }
        double unitX = OVERHANG + number + gap(chip);
        return new Places(OVERHANG, unitX, unitX + unitWidth(chip), extent(chip).baseline());
    }

    @Override
    public void paint(Drawing drawing, Chip chip) {
        Places places = places(drawing, chip);
        double left = Math.floor(places.left()) - OVERHANG;
        double right = Math.ceil(places.right()) + OVERHANG;
        paintPatch(drawing, chip, places.baseline(), left, right);
        boolean changed = chip.content() == Chip.Content.CHANGED;
        Token numberColour = switch (chip.content()) {
            case VALUE -> Token.INK;
            case CHANGED -> Token.CHANGED_INK;
            case MISSING -> Token.MUTED;
        };
        drawing.text(chip.number(), places.left(), places.baseline(), chip.type(), chip.weight(), numberColour);
        Token unitColour = changed ? Token.CHANGED_INK : Token.MUTED;
        drawing.text(chip.unit(), places.unitX(), places.baseline(), Type.CAPTION, Weight.REGULAR, unitColour);
        paintLine(drawing, chip, left, right, places.baseline() + LINE_BELOW_BASELINE);
    }

    private static void paintPatch(Drawing drawing, Chip chip, double baseline, double left, double right) {
        double top = baseline - Math.ceil(chip.type().size() * (1 - ABOVE_CAPITALS / 2)) - 2;
        if (chip.content() == Chip.Content.CHANGED) {
            drawing.box(left, top, right - left, baseline + PATCH_BELOW_BASELINE - top, Token.CHANGED);
        } else if (chip.line() == Chip.Line.SELECTED) {
            drawing.box(left, top, right - left, baseline + LINE_BELOW_BASELINE - top, Token.WASH);
        }
    }

    private static void paintLine(Drawing drawing, Chip chip, double left, double right, double y) {
        boolean here = chip.line() == Chip.Line.SELECTED;
        Token colour = switch (chip.line()) {
            case SELECTED, HOVER -> Token.ACCENT;
            case REST, SHOWN -> chip.content() == Chip.Content.CHANGED ? Token.INK : Token.EDGE;
        };
        if (chip.content() == Chip.Content.MISSING) {
            DimensionLine.DASHED.level(drawing, left, right, y, colour);
        } else if (chip.content() == Chip.Content.CHANGED) {
            DimensionLine.DOUBLED.level(drawing, left, right, y, colour);
            if (here) {
                DimensionLine.STRONG.level(drawing, left, right, y - 1, colour);
            }
        } else if (chip.line() != Chip.Line.REST) {
            (here ? DimensionLine.STRONG : DimensionLine.THIN).level(drawing, left, right, here ? y - 1 : y, colour);
        }
    }

    @Override
    public String name(Chip chip) {
        return chip.name();
    }
}
