package groupwright.definition.record;

import java.util.Optional;

/** A bike the groupset must fit, as an envelope; coordinates from the rear axle, x forward, y up. */
public record Bike(
        RecordId id,
        @Help("What people call it") @Required String title,

        @Help("Bottom bracket to rear axle") @Limits(least = 300, most = 600)
        Optional<Amount> chainstay_mm,

        @Help("Bottom bracket below the line of the axles") @Limits(least = -50, most = 120)
        Optional<Amount> bottomBracketDrop_mm,

        @Help("Rear axle in words, for example 148 x 12") @Default("\"\"")
        String rearAxle,

        @Help("Smallest cog the driver body takes") @Limits(least = 7, most = 20)
        Optional<Amount> driverSmallest_teeth,

        @Help("Middle of the cassette from the centre line of the frame") @Limits(least = 20, most = 80)
        Optional<Amount> cassetteCentre_mm,

        @Help("Innermost chain line in front") @Limits(least = 30, most = 80)
        Optional<Amount> chainLineLeast_mm,

        @Help("Outermost chain line in front") @Limits(least = 30, most = 80)
        Optional<Amount> chainLineMost_mm,

        @Help("Largest ring that clears the frame") @Limits(least = 10, most = 80)
        Optional<Amount> largestRing_teeth,

        @Help("Widest tyre that clears the frame") @Limits(least = 15, most = 150)
        Optional<Amount> largestTyre_mm,

        @Help("Hanger bolt behind the axle is negative, before it positive") @Limits(least = -60, most = 60)
        Optional<Amount> hangerX_mm,

        @Help("Hanger bolt below the axle is negative") @Limits(least = -80, most = 20)
        Optional<Amount> hangerY_mm,

        @Help("Turn of the hanger stop against the vertical") @Limits(least = -90, most = 90)
        Optional<Amount> hangerAngle_deg,

        @Help("Growth of the distance axle to bottom bracket over the suspension travel")
        @Limits(least = 0, most = 80)
        @Default("0")
        Amount chainGrowth_mm,

        @Help("Where these numbers come from") @Default("\"\"")
        String source,

        @Help("Why it left the list; empty while it is on it") @Default("\"\"")
        String retired)
        implements Entry {
    public Bike {
        if (chainLineLeast_mm.isPresent()
                && chainLineMost_mm.isPresent()
                && chainLineLeast_mm.get().value() > chainLineMost_mm.get().value()) {
            throw new Invalid("chainLineMost_mm", "lies inside chainLineLeast_mm", "swap the two");
        }
    }

    public static final Field<Bike, Optional<Amount>> CHAINSTAY =
            Field.of(Bike.class, "chainstay_mm", Bike::chainstay_mm);
    public static final Field<Bike, Optional<Amount>> CASSETTE_CENTRE =
            Field.of(Bike.class, "cassetteCentre_mm", Bike::cassetteCentre_mm);
    public static final Field<Bike, Optional<Amount>> BOTTOM_BRACKET_DROP =
            Field.of(Bike.class, "bottomBracketDrop_mm", Bike::bottomBracketDrop_mm);
    public static final Field<Bike, Optional<Amount>> DRIVER_SMALLEST =
            Field.of(Bike.class, "driverSmallest_teeth", Bike::driverSmallest_teeth);
    public static final Field<Bike, Optional<Amount>> CHAIN_LINE_LEAST =
            Field.of(Bike.class, "chainLineLeast_mm", Bike::chainLineLeast_mm);
    public static final Field<Bike, Optional<Amount>> CHAIN_LINE_MOST =
            Field.of(Bike.class, "chainLineMost_mm", Bike::chainLineMost_mm);
    public static final Field<Bike, Optional<Amount>> LARGEST_RING =
            Field.of(Bike.class, "largestRing_teeth", Bike::largestRing_teeth);
    public static final Field<Bike, Optional<Amount>> LARGEST_TYRE =
            Field.of(Bike.class, "largestTyre_mm", Bike::largestTyre_mm);
    public static final Field<Bike, Optional<Amount>> HANGER_X = Field.of(Bike.class, "hangerX_mm", Bike::hangerX_mm);
    public static final Field<Bike, Optional<Amount>> HANGER_Y = Field.of(Bike.class, "hangerY_mm", Bike::hangerY_mm);
    public static final Field<Bike, Optional<Amount>> HANGER_ANGLE =
            Field.of(Bike.class, "hangerAngle_deg", Bike::hangerAngle_deg);
    public static final Field<Bike, Amount> CHAIN_GROWTH = Field.of(Bike.class, "chainGrowth_mm", Bike::chainGrowth_mm);
    public static final Field<Bike, String> RETIRED = Field.of(Bike.class, "retired", Bike::retired);
}
