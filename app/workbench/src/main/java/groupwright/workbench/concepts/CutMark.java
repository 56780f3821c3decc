package groupwright.workbench.concepts;

import groupwright.workbench.components.ConceptMark;
import groupwright.workbench.components.ConceptTag;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** Paints a concept on the ground of a place; words too long for the room end in "…". */
record CutMark(Type type) implements Painter<ConceptTag> {
    private ConceptMark whole() {
        return new ConceptMark(type, Token.SURFACE);
    }

    @Override
    public Extent extent(ConceptTag concept) {
        return whole().extent(concept);
    }

    @Override
    public void paint(Drawing drawing, ConceptTag concept) {
        double beyond = extent(concept).width() - drawing.width();
        double room = Math.max(0, type.width(concept.words(), Weight.REGULAR) - beyond);
        String words = beyond <= 0 ? concept.words() : type.cut(concept.words(), Weight.REGULAR, room);
        whole().paint(drawing, new ConceptTag(concept.sign(), concept.code(), words, concept.name()));
    }

    @Override
    public String name(ConceptTag concept) {
        return concept.name();
    }
}
