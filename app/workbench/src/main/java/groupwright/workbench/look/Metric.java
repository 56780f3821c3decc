package groupwright.workbench.look;

import javax.swing.UIManager;

/** The lengths the window is built from. */
public enum Metric {
    TOP_BAR("topBar"),
    RAIL("railWidth"),
    RAIL_ROW("railRow"),
    STAGE_ROW("stageRow"),
    STAGE_GAP("stageGap"),
    WORKINGS("workings"),
    WORKINGS_LEAST("workingsLeast"),
    WORKINGS_MOST("workingsMost"),
    WORKINGS_FOLDED("workingsFolded"),
    RIPPLE_LINE("rippleLine"),
    ROW("row"),
    CLOSE_ROW("closeRow"),
    TOUCH_ROW("touchRow"),
    TABLE_HEAD("tableHead"),
    /** Height of fields and buttons. */
    FIELD("field"),
    /** Least room for a click. */
    HIT("hit"),
    /** Only inside a row. */
    HALF_STEP("halfStep"),
    /** The grid: paddings are one, two or three of it. */
    STEP("step"),
    GAP("gap"),
    WIDE_GAP("wideGap"),
    VERDICT_COLUMN("verdictColumn"),
    /** Room for units behind the numbers of a table. */
    UNIT_COLUMN("unitColumn"),
    BAR_LEAST("barLeast"),
    BAR_MOST("barMost"),
    /** Windows narrower than this fold Workings. */
    FOLD_WIDTH("foldWidth"),
    /** Windows narrower than this leave out the counts of the rail. */
    NARROW_WIDTH("narrowWidth"),
    /** Windows lower than this show the ladder of the project in one line. */
    LOW_HEIGHT("lowHeight");

    private final String key;

    Metric(String name) {
        this.key = "Gw." + name;
    }

    /**
     * The length at 100 %, for drawings.
     *
     * @throws IllegalStateException if no look has been set up
     */
    public int units() {
        if (UIManager.get(key) instanceof Integer length) {
            return length;
        }
        throw new IllegalStateException("no length " + key + "; call Look.setUp first");
    }

    /** The length in pixels of a component, at the scale that is set. */
    public int px() {
        return Look.pixels(units());
    }
}
