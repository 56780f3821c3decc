package groupwright.documents.charts;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Objects;
import java.util.Optional;

/**
 * Shape and hue of a concept, the same in all charts: disc, square, triangle, diamond by its place. From the fifth
 * place on shapes and hues begin again, so a name always stands beside the sign.
 *
 * @param place from 1
 * @param standing the lead concept is filled, all others are hollow
 */
public record ConceptSign(int place, Standing standing) {
    /** Which concept the project follows. */
    public enum Standing {
        LEAD,
        OTHER
    }

    private static final double THICKNESS = 1.5;
    private static final int SHAPES = 4;

    public ConceptSign {
        Objects.requireNonNull(standing, "standing");
        if (place < 1) {
            throw new IllegalArgumentException("places count from 1, was " + place);
        }
    }

    Color hue(Palette palette) {
        return palette.concept(place);
    }

    /** How its lines are dashed where lines of concepts cross; nothing for a solid one. */
    Optional<float[]> pattern() {
        return switch (Math.floorMod(place - 1, SHAPES)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(new float[] {7, 3});
            case 2 -> Optional.of(new float[] {2, 3});
            default -> Optional.of(new float[] {9, 3, 2, 3});
        };
    }

    /** The style of what belongs to the concept: the lead's stands out. */
    Lettered lettered(Lettered style) {
        return standing == Standing.LEAD ? style.strong() : style;
    }

    /**
     * Draws the sign.
     *
     * @param x of its middle
     * @param y of its middle
     * @param radius of the disc; the other shapes look as large
     */
    public void paint(Pen pen, double x, double y, double radius) {
        Color hue = hue(pen.palette());
        if (standing == Standing.LEAD) {
            pen.fill(shape(x, y, radius + THICKNESS / 2), hue);
        } else {
            Shape shape = shape(x, y, radius);
            pen.fill(shape, pen.palette().surface());
            pen.stroke(shape, THICKNESS, hue);
        }
    }

    private Shape shape(double x, double y, double r) {
        return switch (Math.floorMod(place - 1, SHAPES)) {
            case 0 -> new Ellipse2D.Double(x - r, y - r, 2 * r, 2 * r);
            case 1 -> new Rectangle2D.Double(x - 0.88 * r, y - 0.88 * r, 1.76 * r, 1.76 * r);
            case 2 -> polygon(x, y - 1.2 * r, x + 1.2 * r, y + 0.9 * r, x - 1.2 * r, y + 0.9 * r);
            default -> polygon(x, y - 1.25 * r, x + 1.25 * r, y, x, y + 1.25 * r, x - 1.25 * r, y);
        };
    }

    private static Shape polygon(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }
}
