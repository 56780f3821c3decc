package groupwright.workbench.components;

import groupwright.definition.record.Part;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.geom.Path2D;

/**
 * Paints what a weight rests on: hollow, half or solid square, always with its word.
 *
 * @param ground what it stands on, which fills the hollow square
 */
public record BasisMark(Token ground) implements Painter<Basis> {
    private static final double SIZE = 9;
    private static final double GAP = 5;

    @Override
    public Extent extent(Basis basis) {
        double height = Type.SECONDARY.line();
        return new Extent(
                SIZE + GAP + Type.SECONDARY.width(basis.word(), Weight.REGULAR),
                height,
                Type.SECONDARY.baseline(height / 2));
    }

    @Override
    public String name(Basis basis) {
        return basis.word();
    }

    @Override
    public void paint(Drawing drawing, Basis basis) {
        double top = Math.round(drawing.height() / 2 - SIZE / 2);
        switch (basis.basis()) {
            case WEIGHED -> drawing.box(0, top, SIZE, SIZE, Token.INK);
            case ESTIMATED, CALCULATED -> {
                drawing.box(0, top, SIZE, SIZE, ground);
                drawing.frame(0, top, SIZE, SIZE, 1, Token.INK);
            }
        }
        if (basis.basis() == Part.Basis.CALCULATED) {
            Path2D half = new Path2D.Double();
            half.moveTo(0, top + SIZE);
            half.lineTo(SIZE, top + SIZE);
            half.lineTo(SIZE, top);
            half.closePath();
            drawing.fill(half, Token.INK);
        }
        drawing.text(
                basis.word(),
                SIZE + GAP,
                Type.SECONDARY.baseline(drawing.height() / 2),
                Type.SECONDARY,
                Weight.REGULAR,
                Token.MUTED);
    }
}
