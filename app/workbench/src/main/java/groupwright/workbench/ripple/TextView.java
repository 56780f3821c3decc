package groupwright.workbench.ripple;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** A short text; where there is not enough room it is cut, and its tip says it all. */
final class TextView extends PaintedView<String> {
    private static final double HEIGHT = 18;

    TextView(String text, Type type, Weight weight, Token colour) {
        super(new Paint(type, weight, colour), text);
    }

    private record Paint(Type type, Weight weight, Token colour) implements Painter<String> {
        @Override
        public Extent extent(String text) {
            double height = Math.max(HEIGHT, type.line());
            return new Extent(type.width(text, weight), height, type.baseline(height / 2));
        }

        @Override
        public String name(String text) {
            return text;
        }

        @Override
        public void paint(Drawing drawing, String text) {
            String fits = type.cut(text, weight, drawing.width() + 1);
            drawing.text(fits, 0, type.baseline(drawing.height() / 2), type, weight, colour);
        }
    }
}
