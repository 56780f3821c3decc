package groupwright.documents.html;

import groupwright.documents.content.BarShares;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Verdict;
import groupwright.documents.tree.VerdictMark;

/**
 * Draws verdict marks and criterion bars. Each carries what a table is sorted by: verdicts from misses to meets, bars their
 * margin. Bars say nothing that does not stand in words beside them.
 */
final class Marks {
    private static final double WIDTH = 112;
    private static final double HEIGHT = 18;
    private static final double TARGET = WIDTH / 2;
    private static final double HALF = TARGET - 3;
    private static final double MIDDLE = HEIGHT / 2;
    private static final double BODY = 8;

    private Marks() {}

    static void verdict(VerdictMark mark, Html html) {
        html.open("span", "class", "verdict " + hue(mark.verdict()), "data-rank", rank(mark.verdict()));
        html.open("svg", "viewBox", "0 0 12 12", "width", "12", "height", "12", "aria-hidden", "true");
        switch (mark.verdict()) {
            case MEETS -> {
                line(3, 0, 3, 12, 1.7, "ink", html);
                path("M4.5 1.1A4.9 4.9 0 0 1 4.5 10.9Z", "fill", html);
            }
            case MISSES -> {
                line(9, 0, 9, 12, 1.7, "ink", html);
                path("M7.4 1.6V10.4L0.8 6Z", "fill", html);
            }
            case MEETS_CLOSE, MISSES_CLOSE -> {
                line(6, 0, 6, 12, 1.7, "ink", html);
                line(0.6, 6, 11.4, 6, 1.7, "ink", html);
                line(0.9, 3, 0.9, 9, 1.7, "ink", html);
                line(11.1, 3, 11.1, 9, 1.7, "ink", html);
            }
            case MISSING_INPUT -> {
                line(6, 0, 6, 2.2, 1.7, "ink", html);
                line(6, 9.8, 6, 12, 1.7, "ink", html);
                ring(6, 6, 3, 1.3, html);
            }
        }
        html.close("svg").text("\u00A0" + mark.word()).close("span");
    }

    static void bar(Inline.Bar bar, Html html) {
        boolean missing = bar.verdict() == Verdict.MISSING_INPUT;
        html.open(
                "svg",
                "class",
                "bar " + hue(bar.verdict()),
                "viewBox",
                "0 0 " + Decimals.of(WIDTH) + " " + Decimals.of(HEIGHT),
                "width",
                Decimals.of(WIDTH),
                "height",
                Decimals.of(HEIGHT),
                "aria-hidden",
                "true",
                "data-rank",
                missing ? "" : Double.toString(bar.margin()));
        if (missing) {
            missing(html);
        } else {
            measured(bar, html);
        }
        html.close("svg");
    }

    private static void missing(Html html) {
        dotted(3, TARGET - 6, html);
        ring(TARGET, MIDDLE, 3, 1.2, html);
        dotted(TARGET + 7, WIDTH - 3, html);
        line(TARGET, 0, TARGET, MIDDLE - 5.5, 1.2, "target", html);
        line(TARGET, MIDDLE + 5.5, TARGET, HEIGHT, 1.2, "target", html);
    }

    private static void measured(Inline.Bar bar, Html html) {
        BarShares shares = BarShares.of(bar.margin(), bar.band(), BarShares.USUAL_SCALE);
        double end = at(shares.end());
        boolean close = bar.verdict().isTooCloseToCall();
        line(3, MIDDLE, WIDTH - 3, MIDDLE, 0.6, "scale", html);
        html.shape(
                "rect",
                "class",
                close ? "hollow" : "fill",
                "x",
                Decimals.of(Math.min(TARGET, end)),
                "y",
                Decimals.of(MIDDLE - BODY / 2),
                "width",
                Decimals.of(Math.abs(end - TARGET)),
                "height",
                Decimals.of(BODY));
        if (shares.reach() == BarShares.Reach.CUT) {
            for (double back : new double[] {6, 9.5}) {
                double x = end - Math.signum(end - TARGET) * back;
                line(x - 1.8, MIDDLE + BODY / 2 + 1, x + 1.8, MIDDLE - BODY / 2 - 1, 1.3, "knocked", html);
            }
        }
        shares.whisker().ifPresent(whisker -> whisker(shares, whisker, close, html));
        line(TARGET, 0, TARGET, HEIGHT, 1.2, "target", html);
    }

    /** Inside a filled bar the whisker is knocked out. */
    private static void whisker(BarShares shares, BarShares.Whisker whisker, boolean close, Html html) {
        double thickness = close ? 1.6 : 1.1;
        line(at(whisker.low()), MIDDLE, at(whisker.high()), MIDDLE, thickness, "whisker", html);
        if (!close) {
            shares.inside()
                    .ifPresent(in -> line(at(in.low()), MIDDLE, at(in.high()), MIDDLE, thickness, "knocked", html));
        }
        for (double share : new double[] {whisker.low(), whisker.high()}) {
            String kind = !close && shares.covers(share) ? "knocked" : "whisker";
            line(at(share), MIDDLE - BODY / 2 + 0.5, at(share), MIDDLE + BODY / 2 - 0.5, thickness, kind, html);
        }
    }

    private static double at(double share) {
        return TARGET + share * HALF;
    }

    private static void line(double x1, double y1, double x2, double y2, double thickness, String kind, Html html) {
        String way = "M" + Decimals.of(x1) + " " + Decimals.of(y1) + "L" + Decimals.of(x2) + " " + Decimals.of(y2);
        html.shape("path", "class", kind, "d", way, "stroke-width", Decimals.of(thickness));
    }

    private static void dotted(double x1, double x2, Html html) {
        String way = "M" + Decimals.of(x1) + " " + Decimals.of(MIDDLE) + "H" + Decimals.of(x2);
        html.shape("path", "class", "ink", "d", way, "stroke-width", "1.2", "stroke-dasharray", "1.2 2.4");
    }

    private static void ring(double x, double y, double radius, double thickness, Html html) {
        html.shape(
                "circle",
                "class",
                "ink",
                "cx",
                Decimals.of(x),
                "cy",
                Decimals.of(y),
                "r",
                Decimals.of(radius),
                "stroke-width",
                Decimals.of(thickness));
    }

    private static void path(String way, String kind, Html html) {
        html.shape("path", "class", kind, "d", way);
    }

    private static String hue(Verdict verdict) {
        return switch (verdict) {
            case MEETS -> "meets";
            case MISSES -> "misses";
            case MEETS_CLOSE, MISSES_CLOSE -> "close";
            case MISSING_INPUT -> "missing";
        };
    }

    private static String rank(Verdict verdict) {
        return switch (verdict) {
            case MISSES -> "1";
            case MISSES_CLOSE -> "2";
            case MISSING_INPUT -> "3";
            case MEETS_CLOSE -> "4";
            case MEETS -> "5";
        };
    }
}
