package groupwright.workbench.cassettes;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Painter;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import java.util.Locale;
import java.util.Optional;

/**
 * The verdict of a cassette for one rider group.
 *
 * @param mark nothing where nothing was judged
 * @param words what the mark says
 */
record ForRiders(Optional<Mark> mark, String words) {
    /** Paints the mark; its words are said. */
    enum Painting implements Painter<ForRiders> {
        PLAIN;

        private static final VerdictMark MARK = new VerdictMark(Locale.ROOT);

        @Override
        public Extent extent(ForRiders value) {
            return new Extent(VerdictMark.SIZE, VerdictMark.SIZE, -1);
        }

        @Override
        public void paint(Drawing drawing, ForRiders value) {
            value.mark().ifPresent(mark -> MARK.paint(drawing, mark));
        }

        @Override
        public String name(ForRiders value) {
            return value.words();
        }
    }
}
