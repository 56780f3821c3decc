package groupwright.workbench.riders;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.Painter;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;

/** Paints which requirements answer a need, or with the missing mark that none does. */
record AnsweredPainter(Words words) implements Painter<NeedRow> {
    private static final MarkedPainter MARKED = new MarkedPainter(Type.TABLE);

    private static CellText links(NeedRow need) {
        return CellText.link(String.join(
                " ", need.answeredBy().stream().map(Object::toString).toList()));
    }

    private Marked nothing() {
        return new Marked(Mark.MISSING, words.text("answered.nothing"), Weight.REGULAR);
    }

    @Override
    public Extent extent(NeedRow need) {
        return need.isUnanswered() ? MARKED.extent(nothing()) : CellTextPainter.PLAIN.extent(links(need));
    }

    @Override
    public void paint(Drawing drawing, NeedRow need) {
        if (need.isUnanswered()) {
            MARKED.paint(drawing, nothing());
        } else {
            CellTextPainter.PLAIN.paint(drawing, links(need));
        }
    }

    @Override
    public String name(NeedRow need) {
        return need.isUnanswered() ? MARKED.name(nothing()) : links(need).text();
    }
}
