package groupwright.workbench.riders;

import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.List;
import java.util.stream.Collectors;

/** Paints how much each group counts: stretches of one bar, each begun by an upright. */
record ImportancePainter(Words words) implements Painter<List<RidersSheet.Group>> {
    private static final double HEIGHT = 16;
    private static final double UPRIGHT = 3;

    @Override
    public Extent extent(List<RidersSheet.Group> groups) {
        return new Extent(Metric.BAR_MOST.units(), HEIGHT, Type.SECONDARY.baseline(HEIGHT / 2));
    }

    @Override
    public void paint(Drawing drawing, List<RidersSheet.Group> groups) {
        double x = 0;
        drawing.box(0, 0, drawing.width(), drawing.height(), Token.GROUND);
        for (RidersSheet.Group group : groups) {
            double width = drawing.width() * group.share() / 100;
            drawing.box(x, 0, UPRIGHT, drawing.height(), Token.INK);
            String text = words.text("share", group.id().text(), group.share());
            double room = width - UPRIGHT - Metric.STEP.units();
            drawing.text(
                    Type.SECONDARY.cut(text, Weight.STRONG, Math.max(0, room)),
                    x + UPRIGHT + Metric.STEP.units() - 2,
                    Type.SECONDARY.baseline(drawing.height() / 2),
                    Type.SECONDARY,
                    Weight.STRONG,
                    Token.INK);
            x += width;
        }
    }

    @Override
    public String name(List<RidersSheet.Group> groups) {
        return groups.stream()
                .map(group -> words.text("share.name", group.id().text(), group.title(), group.share()))
                .collect(Collectors.joining("; "));
    }
}
