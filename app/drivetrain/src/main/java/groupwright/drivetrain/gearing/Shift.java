package groupwright.drivetrain.gearing;

/**
 * A change from one gear to another.
 *
 * @param from the gear before
 * @param to the gear after
 * @param ringsMoved rings moved, positive towards larger ones
 * @param cogsMoved cogs moved, positive towards larger ones
 */
public record Shift(Gear from, Gear to, int ringsMoved, int cogsMoved) {

    /** The change between two gears of a set, counted in the places of its rings and cogs. */
    static Shift between(GearSet set, Gear from, Gear to) {
        var rings = set.crankset().rings();
        var cogs = set.cassette().cogs();
        return new Shift(
                from,
                to,
                rings.indexOf(to.ring()) - rings.indexOf(from.ring()),
                cogs.indexOf(to.cog()) - cogs.indexOf(from.cog()));
    }

    /** How much higher the gear after is, in percent; negative if it is lower. */
    public double stepPct() {
        return from.stepToPct(to);
    }
}
