package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One concept in the top bar: a click, Enter or Space makes it the lead. The lead stands raised in an ink outline. */
public final class ConceptChooserButton extends PaintedView<ConceptTag> {
    /**
     * A button.
     *
     * @param chosen makes the concept the lead; not called for the one that leads
     */
    public ConceptChooserButton(ConceptTag concept, Runnable chosen) {
        super(new Face(), concept, AccessibleRole.RADIO_BUTTON);
        Press.install(this, () -> {
            if (!value().leads()) {
                chosen.run();
            }
        });
    }

    @Override
    void addStates(AccessibleStateSet states) {
        if (value().leads()) {
            states.add(AccessibleState.CHECKED);
        }
    }

    /** Paints the button. */
    private static final class Face implements Painter<ConceptTag> {
        private static final double PADDING = 10;

        private static ConceptMark mark(ConceptTag concept) {
            return new ConceptMark(Type.BODY, concept.leads() ? Token.RAISED : Token.GROUND);
        }

        @Override
        public Extent extent(ConceptTag concept) {
            Extent inner = mark(concept).extent(concept);
            double height = Metric.FIELD.units();
            return new Extent(inner.width() + 2 * PADDING, height, Type.BODY.baseline(height / 2));
        }

        @Override
        public void paint(Drawing drawing, ConceptTag concept) {
            if (concept.leads()) {
                drawing.rounded(0, 0, drawing.width(), drawing.height(), Token.RAISED, Token.INK);
            }
            try (Drawing inner = drawing.part(PADDING, 0, drawing.width() - 2 * PADDING, drawing.height())) {
                mark(concept).paint(inner, concept);
            }
        }

        @Override
        public String name(ConceptTag concept) {
            return concept.name();
        }
    }
}
