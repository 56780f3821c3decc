package groupwright.workbench.claims;

import groupwright.workbench.components.ChipPainter;
import groupwright.workbench.components.Extent;
import groupwright.workbench.components.Painter;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;

/** Paints then and now; in a column the signs between them stand on one upright. */
enum MovedPainter implements Painter<Moved> {
    PLAIN;

    private static final double HEIGHT = 24;
    private static final double THEN = 46;
    private static final double SIGN = 54;
    private static final double NOW = 72;

    @Override
    public Extent extent(Moved moved) {
        return new Extent(NOW + ChipPainter.ALONE.extent(moved.now()).width(), HEIGHT, Type.TABLE.baseline(HEIGHT / 2));
    }

    @Override
    public void paint(Drawing drawing, Moved moved) {
        double baseline = Type.TABLE.baseline(drawing.height() / 2);
        moved.then().ifPresent(then -> drawing.textUpTo(then, THEN, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED));
        drawing.text(moved.sign().text(), SIGN, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED);
        double chip = ChipPainter.ALONE.extent(moved.now()).baseline();
        double height = ChipPainter.ALONE.extent(moved.now()).height();
        try (Drawing now = drawing.part(NOW, baseline - chip, drawing.width() - NOW, height)) {
            ChipPainter.ALONE.paint(now, moved.now());
        }
    }

    @Override
    public String name(Moved moved) {
        return moved.then().map(then -> then + " " + moved.sign().text() + " ").orElse("")
                + moved.now().name();
    }
}
