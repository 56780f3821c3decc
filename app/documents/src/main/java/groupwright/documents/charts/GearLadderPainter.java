package groupwright.documents.charts;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Draws a gear ladder. */
final class GearLadderPainter {
    private static final double SIGN = 4;
    private static final double LANE_LINE = 1.5;

    private final GearLadder ladder;
    private final GearLadderLayout layout;

    GearLadderPainter(GearLadder ladder, GearLadderLayout layout) {
        this.ladder = ladder;
        this.layout = layout;
    }

    void paint(Pen pen) {
        grid(pen);
        layout.uprights().forEach(upright -> line(pen, upright));
        layout.uprights().forEach(upright -> sentence(pen, upright));
        for (int i = 0; i < ladder.lanes().size(); i++) {
            lane(pen, ladder.lanes().get(i), layout.laneY(i));
        }
    }

    private void grid(Pen pen) {
        GearLadderWords words = new GearLadderWords(ladder);
        LogScale scale = words.shown(layout.scale());
        List<Double> ticks = scale.ticks();
        List<String> texts = words.ticks(ticks);
        for (int i = 0; i < ticks.size(); i++) {
            double x = scale.position(ticks.get(i));
            double sharp = Pen.sharp(x);
            pen.line(
                    sharp,
                    layout.top(),
                    sharp,
                    layout.bottom(),
                    1,
                    pen.palette().hairline());
            pen.textCentred(
                    texts.get(i),
                    x,
                    layout.height() - 4,
                    Lettered.LABEL,
                    pen.palette().muted());
        }
    }

    private void line(Pen pen, GearLadderLayout.Upright upright) {
        double x = Pen.sharp(upright.x());
        pen.line(
                x,
                layout.uprightTop(upright),
                x,
                layout.bottom(),
                1,
                pen.palette().ink());
    }

    /** The sentence keeps clear of lines behind it. */
    private void sentence(Pen pen, GearLadderLayout.Upright upright) {
        double baseline = layout.sentenceBaseline(upright);
        pen.fill(
                new Rectangle2D.Double(upright.left() - 2, baseline - 10, upright.right() - upright.left() + 4, 13),
                pen.palette().surface());
        pen.text(
                upright.need().sentence(),
                upright.left(),
                baseline,
                Lettered.LABEL.strong(),
                pen.palette().ink());
    }

    private void lane(Pen pen, GearLadder.Lane lane, double y) {
        Color hue = lane.sign().hue(pen.palette());
        lane.sign().paint(pen, GearLadderLayout.SIGN_X, y, SIGN);
        Lettered name = lane.sign().lettered(Lettered.LABEL);
        pen.text(
                lane.concept(),
                GearLadderLayout.NAME_X,
                y + 4,
                name,
                pen.palette().ink());
        pen.text(
                Integer.toString(lane.ring()),
                layout.ringX(),
                y + 4,
                Lettered.LABEL,
                pen.palette().muted());
        LogScale scale = layout.scale();
        pen.line(scale.position(lane.lowest()), y, scale.position(lane.highest()), y, LANE_LINE, hue);
        lane.developmentsM().forEach(development -> lane.sign().paint(pen, scale.position(development), y, SIGN));
    }
}
