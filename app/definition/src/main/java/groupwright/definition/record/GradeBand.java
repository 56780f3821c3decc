package groupwright.definition.record;

/** How much of a group's distance lies between two grades. */
public record GradeBand(
        @Help("Short id") String id,

        @Help("From this grade") @Limits(least = -60, most = 60)
        Amount from_pct,

        @Help("To this grade") @Limits(least = -60, most = 60)
        Amount to_pct,

        @Help("Share of the distance") @Limits(least = 0, most = 100)
        Amount share_pct)
        implements Item {
    public GradeBand {
        if (from_pct.value() >= to_pct.value()) {
            throw new Invalid("to_pct", "the band ends at or below its beginning", "write a grade above from_pct");
        }
    }

    public static final Field<GradeBand, Amount> FROM = Field.of(GradeBand.class, "from_pct", GradeBand::from_pct);
    public static final Field<GradeBand, Amount> TO = Field.of(GradeBand.class, "to_pct", GradeBand::to_pct);
    public static final Field<GradeBand, Amount> SHARE = Field.of(GradeBand.class, "share_pct", GradeBand::share_pct);
}
