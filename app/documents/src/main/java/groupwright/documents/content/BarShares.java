package groupwright.documents.content;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where the parts of a criterion bar stand, in shares of half its length: 0 is the target in the middle, 1 the right end,
 * which is good. Screen and page draw from the same shares.
 *
 * @param end where the bar ends, from −1 to 1
 * @param reach whether the value lies on the scale
 * @param whisker what is known of the value, cut at the ends of the scale
 */
public record BarShares(double end, Reach reach, Optional<Whisker> whisker) {
    /** Margin at which a bar is cut, as a share of the target: ±15 %. */
    public static final double USUAL_SCALE = 0.15;

    /** Whether a bar shows its whole length. */
    public enum Reach {
        ON_SCALE,
        /** The value lies beyond the scale; the bar is cut and the number tells. */
        CUT
    }

    /** The band, from low to high. */
    public record Whisker(double low, double high) {}

    /**
     * Computes the shares.
     *
     * @param margin from the target to the value, good is positive
     * @param band on the scale of the margin
     * @param scale the margin at the end of the bar, above 0, in the unit of the margin
     */
    public static BarShares of(double margin, Optional<Band> band, double scale) {
        if (!(scale > 0 && Double.isFinite(scale)) || !Double.isFinite(margin)) {
            throw new IllegalArgumentException("no bar for margin " + margin + " on the scale " + scale);
        }
        return new BarShares(
                onScale(margin / scale),
                Math.abs(margin) > scale ? Reach.CUT : Reach.ON_SCALE,
                band.map(b -> new Whisker(onScale(b.low() / scale), onScale(b.high() / scale))));
    }

    /** A further mark on the scale, such as a stretch target; nothing where it lies beyond the ends. */
    public static OptionalDouble mark(double margin, double scale) {
        return Math.abs(margin) <= scale ? OptionalDouble.of(margin / scale) : OptionalDouble.empty();
    }

    /** The part of the whisker that lies on the bar, where it is knocked out. */
    public Optional<Whisker> inside() {
        return whisker.map(w -> new Whisker(Math.max(w.low(), Math.min(0, end)), Math.min(w.high(), Math.max(0, end))))
                .filter(w -> w.low() < w.high());
    }

    /** Whether a place lies on the bar, its ends left out. */
    public boolean covers(double share) {
        return share * (share - end) < 0;
    }

    private static double onScale(double share) {
        return Math.max(-1, Math.min(1, share));
    }
}
