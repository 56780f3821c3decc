package groupwright.documents.charts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/**
 * Where everything on a drawing from above stands.
 *
 * @param bracketX middle of the rings
 * @param axleX middle of the cogs
 * @param perMm along the bike
 * @param outermostMm line that lies at the top
 * @param labelsX where what is written behind the cogs begins
 */
record FromAboveLayout(
        double width, double height, double bracketX, double axleX, double perMm, double outermostMm, double labelsX) {
    static final double SIGN = 10;
    static final double GAP = 8;
    static final double LINE = 17;
    private static final double TOP = 12;
    /** It may be as high as this share of its width, within limits. */
    private static final double HEIGHT_SHARE = 0.155;

    private static final double LOWEST_ROOM = 140;
    private static final double HIGHEST_ROOM = 320;
    private static final double LEAST_PER_MM = 0.42;

    static FromAboveLayout of(FromAbove above, TextWidths widths, double asked) {
        double left = GAP + widest(above, entrant -> widestRing(above, entrant, widths));
        FromAboveWords words = new FromAboveWords(above);
        double behind = Math.max(
                Lettered.LABEL.width(words.centre(), widths),
                widest(
                        above,
                        entrant -> SIGN
                                + 2 * GAP
                                + Lettered.CAPTION.strong().width(entrant.concept() + entrant.angle(), widths)
                                + GAP
                                + Lettered.CAPTION.width(entrant.verdict(), widths)));
        double right = 2 * GAP + behind;
        double rings = widest(above, entrant -> radius(entrant.rings()));
        double cogs = widest(above, entrant -> radius(entrant.cogs()));
        double along = rings + above.spanMm() + cogs;
        double high = lines(above).max().orElse(above.centreMm());
        double low = lines(above).min().orElse(above.centreMm());
        double highest = Math.max(LOWEST_ROOM, Math.min(HIGHEST_ROOM, HEIGHT_SHARE * asked));
        double room = Math.min((asked - left - right) / along, highest / (FromAbove.ACROSS * Math.max(1, high - low)));
        double perMm = Math.max(LEAST_PER_MM, room);
        double bracket = left + rings * perMm;
        double axle = bracket + above.spanMm() * perMm;
        double labels = axle + cogs * perMm + 2 * GAP;
        double height = Math.max(
                FromAbove.ACROSS * (high - low) * perMm,
                LINE * (above.entrants().size() + 1));
        return new FromAboveLayout(
                Math.max(asked, labels + behind), TOP + height + TOP, bracket, axle, perMm, high, labels);
    }

    private static double widestRing(FromAbove above, FromAbove.Entrant entrant, TextWidths widths) {
        FromAboveWords words = new FromAboveWords(above);
        return entrant.rings().stream()
                .mapToDouble(ring -> Lettered.LABEL.width(words.ring(entrant, ring), widths))
                .max()
                .orElse(0);
    }

    private static double widest(FromAbove above, ToDoubleFunction<FromAbove.Entrant> width) {
        return above.entrants().stream().mapToDouble(width).max().orElse(0);
    }

    private static double radius(List<FromAbove.Wheel> wheels) {
        return wheels.stream().mapToDouble(FromAbove.Wheel::radiusMm).max().orElse(0);
    }

    private static DoubleStream lines(FromAbove above) {
        return DoubleStream.concat(
                DoubleStream.of(above.centreMm()),
                above.entrants().stream()
                        .flatMapToDouble(entrant -> DoubleStream.concat(
                                entrant.rings().stream().mapToDouble(FromAbove.Wheel::lineMm),
                                entrant.cogs().stream().mapToDouble(FromAbove.Wheel::lineMm))));
    }

    /** Height at which a line lies; outwards is up. */
    double y(double lineMm) {
        return TOP + (outermostMm - lineMm) * FromAbove.ACROSS * perMm;
    }

    /** A text that wants to stand at a height. */
    record Standing<T>(T what, double wanted, double y) {}

    /** Texts one under the other, each as near to where it wants to stand as those above and the foot of the drawing let it. */
    <T> List<Standing<T>> apart(List<T> texts, ToDoubleFunction<T> wanted) {
        List<T> byHeight =
                texts.stream().sorted(Comparator.comparingDouble(wanted)).toList();
        List<Standing<T>> placed = new ArrayList<>();
        double free = height;
        for (int i = byHeight.size() - 1; i >= 0; i--) { // from the foot upwards: nothing falls out
            T text = byHeight.get(i);
            double y = Math.min(wanted.applyAsDouble(text), free - LINE);
            placed.add(0, new Standing<>(text, wanted.applyAsDouble(text), y));
            free = y;
        }
        return placed;
    }
}
