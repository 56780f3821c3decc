package groupwright.workbench.workings;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** Paints a short text with digits of one width. */
record TextLine(Token colour) implements Painter<String> {
    @Override
    public Extent extent(String text) {
        double height = Type.TABLE.line();
        return new Extent(Type.TABLE.width(text, Weight.REGULAR), height, Type.TABLE.baseline(height / 2));
    }

    @Override
    public String name(String text) {
        return text;
    }

    @Override
    public void paint(Drawing drawing, String text) {
        drawing.text(text, 0, Type.TABLE.baseline(drawing.height() / 2), Type.TABLE, Weight.REGULAR, colour);
    }
}
