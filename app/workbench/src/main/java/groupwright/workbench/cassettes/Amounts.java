package groupwright.workbench.cassettes;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** Paints numbers in a column: right-aligned, each with its unit behind it in muted. */
enum Amounts implements Painter<Amounts.Amount> {
    PLAIN;

    /** A number and its unit. */
    record Amount(String number, String unit, Weight weight) {}

    private static final double UNIT = 25;
    private static final double GAP = 4;
    private static final double HEIGHT = 18;

    @Override
    public Extent extent(Amount amount) {
        return new Extent(Type.TABLE.width(amount.number(), amount.weight()) + GAP + UNIT, HEIGHT, -1);
    }

    @Override
    public void paint(Drawing drawing, Amount amount) {
        double baseline = Type.TABLE.baseline(drawing.height() / 2);
        double end = drawing.width() - UNIT;
        drawing.textUpTo(amount.number(), end, baseline, Type.TABLE, amount.weight(), Token.INK);
        drawing.text(amount.unit(), end + GAP, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
    }

    @Override
    public String name(Amount amount) {
        return amount.number() + " " + amount.unit();
    }
}
