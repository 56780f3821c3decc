package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.util.Objects;

/**
 * Paints the sign of a concept, its code, and what it is in muted words.
 *
 * @param ground what it stands on, which fills hollow signs
 */
public record ConceptMark(Type type, Token ground) implements Painter<ConceptTag> {
    private static final double SIGN = 12;
    private static final double RADIUS = 4.75;
    private static final double GAP = 6;
    private static final double WORD_GAP = 8;

    public ConceptMark {
        Objects.requireNonNull(type, "type");
        Objects.requireNonNull(ground, "ground");
    }

    private static Weight weight(ConceptTag concept) {
        return concept.leads() ? Weight.STRONG : Weight.REGULAR;
    }

    private double wordsX(ConceptTag concept) {
        return SIGN + GAP + type.width(concept.code(), weight(concept)) + WORD_GAP;
    }

    @Override
    public Extent extent(ConceptTag concept) {
        double height = Math.max(SIGN + 2, type.line());
        double width = concept.words().isEmpty()
                ? wordsX(concept) - WORD_GAP
                : wordsX(concept) + type.width(concept.words(), Weight.REGULAR);
        return new Extent(width, height, type.baseline(height / 2));
    }

    @Override
    public void paint(Drawing drawing, ConceptTag concept) {
        double middle = drawing.height() / 2;
        double baseline = type.baseline(middle);
        concept.sign().paint(drawing.pen(ground), SIGN / 2, middle, RADIUS);
        drawing.text(concept.code(), SIGN + GAP, baseline, type, weight(concept), Token.INK);
        drawing.text(concept.words(), wordsX(concept), baseline, type, Weight.REGULAR, Token.MUTED);
    }

    @Override
    public String name(ConceptTag concept) {
        return concept.name();
    }
}
