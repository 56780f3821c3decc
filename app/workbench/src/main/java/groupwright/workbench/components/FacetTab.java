package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.Locale;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** One of some facets. */
final class FacetTab extends PaintedView<FacetTab.Shown> {
    enum Standing {
        ACTIVE,
        OTHER
    }

    record Shown(Facet facet, Standing standing, Locale locale) {}

    FacetTab(Shown shown, Runnable chosen) {
        super(new Face(), shown, AccessibleRole.PAGE_TAB);
        Press.install(this, chosen);
    }

    @Override
    void addStates(AccessibleStateSet states) {
        if (value().standing() == Standing.ACTIVE) {
            states.add(AccessibleState.SELECTED);
        }
    }

    private static final class Face implements Painter<Shown> {
        private static final double HEIGHT = 28;
        private static final double GAP = 6;
        private static final double UNDERLINE = 2;
        private static final Type TYPE = Type.BODY;

        private static Weight weight(Shown shown) {
            return shown.standing() == Standing.ACTIVE ? Weight.STRONG : Weight.REGULAR;
        }

        private static double wordX(Shown shown) {
            return shown.facet().mark().isPresent() ? VerdictMark.SIZE + GAP : 0;
        }

        private static double countX(Shown shown) {
            return wordX(shown) + TYPE.width(shown.facet().word(), weight(shown)) + GAP;
        }

        private static String count(Shown shown) {
            return Integer.toString(shown.facet().count());
        }

        @Override
        public Extent extent(Shown shown) {
            return new Extent(
                    Math.ceil(countX(shown) + TYPE.width(count(shown), Weight.REGULAR)),
                    HEIGHT,
                    TYPE.baseline(HEIGHT / 2 - 1));
        }

        @Override
        public void paint(Drawing drawing, Shown shown) {
            double middle = HEIGHT / 2 - 1;
            double baseline = TYPE.baseline(middle);
            shown.facet()
                    .mark()
                    .ifPresent(
                            mark -> VerdictMark.paintAt(drawing, mark, 0, Math.floor(middle - VerdictMark.SIZE / 2)));
            drawing.text(shown.facet().word(), wordX(shown), baseline, TYPE, weight(shown), Token.INK);
            drawing.text(count(shown), countX(shown), baseline, TYPE, Weight.REGULAR, Token.MUTED);
            if (shown.standing() == Standing.ACTIVE) {
                double to = countX(shown) - GAP;
                drawing.level(0, to, HEIGHT - UNDERLINE, UNDERLINE, Token.ACCENT);
            }
        }

        @Override
        public String name(Shown shown) {
            return Words.of(FacetTab.class, shown.locale())
                    .text("facet.name", shown.facet().word(), count(shown));
        }
    }
}
