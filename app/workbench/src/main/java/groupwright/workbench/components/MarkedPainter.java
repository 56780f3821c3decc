package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import java.util.Objects;

/**
 * Paints a mark and its word. The word is always ink, and is never cut.
 *
 * @param type {@link Type#TABLE} in tables
 */
public record MarkedPainter(Type type) implements Painter<Marked> {
    private static final double GAP = 6;

    public MarkedPainter {
        Objects.requireNonNull(type, "type");
    }

    @Override
    public Extent extent(Marked marked) {
        double height = Math.max(type.line(), VerdictMark.SIZE);
        return new Extent(
                VerdictMark.SIZE + GAP + type.width(marked.word(), marked.weight()), height, type.baseline(height / 2));
    }

    @Override
    public void paint(Drawing drawing, Marked marked) {
        double middle = drawing.height() / 2;
        VerdictMark.paintAt(drawing, marked.mark(), 0, Math.floor(middle - VerdictMark.SIZE / 2));
        drawing.text(marked.word(), VerdictMark.SIZE + GAP, type.baseline(middle), type, marked.weight(), Token.INK);
    }

    @Override
    public String name(Marked marked) {
        return marked.word();
    }
}
