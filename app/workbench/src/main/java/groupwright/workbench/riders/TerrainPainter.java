package groupwright.workbench.riders;

import groupwright.documents.numbers.Reader;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.riders.RidersSheet.Group;
import groupwright.workbench.riders.RidersSheet.Slope;
import groupwright.workbench.riders.RidersSheet.Terrain;
import java.util.stream.Collectors;

/** Paints how much of the distance lies on which grade. All groups share one scale, whose bars stand on zero. */
record TerrainPainter(Words words, double most) implements Painter<Group> {
    private static final double HEIGHT = 88;
    private static final double BASE = 66;
    private static final double TALLEST = 46;
    private static final double GAP = 6;
    private static final double BELOW = 14;
    private static final double WIDEST = 40;

    @Override
    public Extent extent(Group group) {
        return new Extent(Metric.BAR_MOST.units(), HEIGHT, -1);
    }

    @Override
    public void paint(Drawing drawing, Group group) {
        if (group.terrain().isEmpty()) {
            drawing.text(words.text("not.given"), 0, BASE, Type.CAPTION, Weight.REGULAR, Token.MUTED);
            return;
        }
        int count = group.terrain().size();
        double step = Math.min(WIDEST, (drawing.width() - Metric.GAP.units()) / count);
        double free = 0;
        drawing.level(0, step * count - GAP, BASE, 1, Token.EDGE);
        for (int i = 0; i < count; i++) {
            Terrain terrain = group.terrain().get(i);
            double height = TALLEST * terrain.share() / Math.max(1, most);
            Token colour = terrain.slope() == Slope.DOWN ? Token.EDGE : Token.INK;
            drawing.box(i * step, BASE - height, step - GAP, height, colour);
            middle(drawing, share(terrain), i * step, step, BASE - height - 3, Token.INK);
            double wide = Type.CAPTION.width(terrain.grade(), Weight.REGULAR);
            double left = Math.max(0, i * step + (step - GAP - wide) / 2);
            if (left >= free) { // a name that would touch its neighbour is left to the description
                drawing.text(terrain.grade(), left, BASE + BELOW, Type.CAPTION, Weight.REGULAR, Token.MUTED);
                free = left + wide + GAP / 2;
            }
        }
    }

    private String share(Terrain terrain) {
        return new Reader(words.locale()).exact(terrain.share());
    }

    private static void middle(Drawing drawing, String text, double x, double step, double baseline, Token colour) {
        double left = Math.max(0, x + (step - GAP - Type.CAPTION.width(text, Weight.REGULAR)) / 2);
        drawing.text(text, left, baseline, Type.CAPTION, Weight.REGULAR, colour);
    }

    @Override
    public String name(Group group) {
        if (group.terrain().isEmpty()) {
            return words.text("terrain.none", group.title());
        }
        String parts = group.terrain().stream()
                .map(terrain -> words.text("terrain.part", terrain.grade(), share(terrain)))
                .collect(Collectors.joining(", "));
        return words.text("terrain.name", group.title(), parts);
    }
}
