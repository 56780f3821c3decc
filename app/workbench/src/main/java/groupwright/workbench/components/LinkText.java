package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.Objects;

/**
 * Paints texts in accent that lead somewhere (underlined) or do something (heavier, without a line).
 */
record LinkText(Kind kind, Type type) implements Painter<String> {
    enum Kind {
        LEADS(Weight.REGULAR),
        DOES(Weight.STRONG),
        /** Does nothing now. */
        IDLE(Weight.STRONG);

        private final Weight weight;

        Kind(Weight weight) {
            this.weight = weight;
        }
    }

    private static final double UNDERLINE_BELOW = 3;

    LinkText {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(type, "type");
    }

    @Override
    public Extent extent(String text) {
        double height = Math.max(18, type.line());
        return new Extent(type.width(text, kind.weight), height, type.baseline(height / 2));
    }

    @Override
    public void paint(Drawing drawing, String text) {
        String shown = type.cut(text, kind.weight, drawing.width() + 1);
        double baseline = type.baseline(drawing.height() / 2);
        drawing.text(shown, 0, baseline, type, kind.weight, kind == Kind.IDLE ? Token.MUTED : Token.ACCENT);
        if (kind == Kind.LEADS) {
            drawing.level(0, type.width(shown, kind.weight), baseline + UNDERLINE_BELOW, 1, Token.ACCENT);
        }
    }

    @Override
    public String name(String text) {
        return text;
    }
}
