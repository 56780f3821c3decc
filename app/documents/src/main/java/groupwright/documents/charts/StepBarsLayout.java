package groupwright.documents.charts;

import java.awt.geom.Rectangle2D;

/**
 * Where everything on step bars stands.
 *
 * @param pitch from cog to cog
 * @param perPct height of one percent
 * @param sentence where the limit is written
 */
record StepBarsLayout(double width, double pitch, double perPct, Sentence sentence) {
    /** Where the limit is written. */
    enum Sentence {
        NONE,
        BESIDE,
        BELOW
    }

    static final double VALUES_BASELINE = 10;
    /** The line the bars stand on. */
    static final double BASE = 74;

    static final double COGS_BASELINE = BASE + 15;
    static final double DOTS = BASE + 24;
    static final double SENTENCE_BASELINE = BASE + 44;
    private static final double HIGHEST_BAR = 56;
    private static final double BOTTOM = BASE + 30;
    private static final double BOTTOM_WITH_SENTENCE = BASE + 49;
    private static final double WIDEST_PITCH = 40;
    /** A value with its decimal needs so much. */
    private static final double NARROWEST_PITCH = 24;

    static final double SENTENCE_GAP = 6;

    static StepBarsLayout of(StepBars bars, TextWidths widths, double asked) {
        int cogs = bars.steps().size() + 1;
        double width = Math.max(asked, cogs * NARROWEST_PITCH);
        double beside = bars.limit()
                .map(limit -> {
                    StepBarsWords words = new StepBarsWords(bars);
                    return SENTENCE_GAP
                            + Math.max(
                                    Lettered.SMALL.strong().width(words.limit(limit), widths),
                                    Lettered.SMALL.width(words.from(limit), widths));
                })
                .orElse(0.0);
        boolean fits = cogs * NARROWEST_PITCH + beside <= width;
        double pitch = Math.min(WIDEST_PITCH, (width - (fits ? beside : 0)) / cogs);
        Sentence sentence = bars.limit().isEmpty() ? Sentence.NONE : fits ? Sentence.BESIDE : Sentence.BELOW;
        return new StepBarsLayout(width, pitch, HIGHEST_BAR / bars.topPct(), sentence);
    }

    double height() {
        return sentence == Sentence.BELOW ? BOTTOM_WITH_SENTENCE : BOTTOM;
    }

    /** Middle of a cog's number, from 0. */
    double cogX(int cog) {
        return pitch * (cog + 0.5);
    }

    /** Around a cog's number, as wide as the cogs stand apart. */
    Rectangle2D cogRoom(int cog) {
        return new Rectangle2D.Double(cogX(cog) - pitch / 2, BASE + 1, pitch, COGS_BASELINE + 4 - BASE);
    }

    /** Middle of the bar between a cog and the next. */
    double barX(int step) {
        return pitch * (step + 1);
    }

    double barWidth() {
        return Math.rint(Math.min(20, pitch * 0.58));
    }

    /** Height at which a step stands. */
    double y(double pct) {
        return BASE - pct * perPct;
    }

    /** Right end of the axis. */
    double right(int steps) {
        return pitch * (steps + 1);
    }
}
