package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** Paints the head of a section: a hairline over the whole width, and the word below it. */
public enum SectionHead implements Painter<String> {
    /** As in Workings. */
    PLAIN;

    private static final double HEIGHT = 26;
    private static final double MIDDLE = 15;

    /** A head as a component. */
    public static PaintedView<String> view(String word) {
        return new PaintedView<>(PLAIN, word);
    }

    @Override
    public Extent extent(String word) {
        return new Extent(Type.CAPTION.width(word, Weight.STRONG), HEIGHT, Type.CAPTION.baseline(MIDDLE));
    }

    @Override
    public void paint(Drawing drawing, String word) {
        drawing.level(0, drawing.width(), 0, 1, Token.HAIRLINE);
        drawing.text(word, 0, Type.CAPTION.baseline(MIDDLE), Type.CAPTION, Weight.STRONG, Token.MUTED);
    }

    @Override
    public String name(String word) {
        return word;
    }
}
