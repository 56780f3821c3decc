package groupwright.workbench.riders;

import groupwright.documents.numbers.Reader;
import groupwright.workbench.components.DimensionLine;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.riders.RidersSheet.Cadence;
import groupwright.workbench.riders.RidersSheet.Group;

/** Paints a cadence window as a dimension line, the preferred part of it solid. All groups share one axis. */
record CadencePainter(Words words, double first, double last) implements Painter<Group> {
    private static final double HEIGHT = 54;
    private static final double MIDDLE = 27;
    private static final double BAR = 8;
    private static final double ABOVE = 10;
    private static final double BELOW = 18;

    @Override
    public Extent extent(Group group) {
        return new Extent(Metric.BAR_MOST.units(), HEIGHT, -1);
    }

    @Override
    public void paint(Drawing drawing, Group group) {
        double width = drawing.width() - Metric.GAP.units();
        drawing.level(0, width, MIDDLE, 1, Token.HAIRLINE);
        if (group.cadence().isEmpty()) {
            drawing.text(
                    words.text("not.given"),
                    0,
                    MIDDLE - Metric.HALF_STEP.units(),
                    Type.CAPTION,
                    Weight.REGULAR,
                    Token.MUTED);
            return;
        }
        Cadence cadence = group.cadence().get();
        DimensionLine.THIN.level(drawing, x(cadence.least(), width), x(cadence.most(), width), MIDDLE, Token.INK);
        double low = x(cadence.low(), width);
        double high = x(cadence.high(), width);
        drawing.box(low, MIDDLE - BAR / 2, high - low, BAR, Token.INK);
        number(drawing, cadence.low(), low, MIDDLE - ABOVE);
        number(drawing, cadence.high(), high, MIDDLE - ABOVE);
        number(drawing, cadence.least(), x(cadence.least(), width), MIDDLE + BELOW);
        number(drawing, cadence.most(), x(cadence.most(), width), MIDDLE + BELOW);
    }

    private double x(double rpm, double width) {
        double margin = Metric.GAP.units();
        return margin + (width - 2 * margin) * (rpm - first) / (last - first);
    }

    private void number(Drawing drawing, double rpm, double x, double baseline) {
        String text = new Reader(words.locale()).exact(rpm);
        double left = x - Type.CAPTION.width(text, Weight.REGULAR) / 2;
        drawing.text(text, left, baseline, Type.CAPTION, Weight.REGULAR, Token.INK);
    }

    @Override
    public String name(Group group) {
        Reader reader = new Reader(words.locale());
        return group.cadence()
                .map(cadence -> words.text(
                        "cadence.name",
                        group.title(),
                        reader.exact(cadence.least()),
                        reader.exact(cadence.most()),
                        reader.exact(cadence.low()),
                        reader.exact(cadence.high())))
                .orElse(words.text("cadence.none", group.title()));
    }
}
