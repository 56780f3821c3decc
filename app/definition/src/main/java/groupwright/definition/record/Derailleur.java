package groupwright.definition.record;

import java.util.Optional;

/**
 * The rear derailleur as a mechanism; coordinates from the rear axle in the plane of the chain, x forward, y up, angles
 * from forward, counter-clockwise.
 */
public record Derailleur(
        @Help("Cage pivot at the smallest cog, forward of the axle") @Limits(least = -150, most = 150)
        Optional<Amount> pivotX_mm,

        @Help("Cage pivot at the smallest cog, above the axle") @Limits(least = -200, most = 50)
        Optional<Amount> pivotY_mm,

        @Help("Direction of the pivot's path in the plane of the chain") @Limits(least = -180, most = 180)
        Optional<Amount> pathDirection_deg,

        @Help("How far the pivot moves along the path for each mm of side travel, as an angle")
        @Limits(least = 0, most = 80)
        Optional<Amount> pathSlope_deg,

        @Help("Cage pivot to the centre of the guide pulley") @Limits(least = 0, most = 80)
        Optional<Amount> guideOffset_mm,

        @Help("Guide pulley's direction from the cage line") @Limits(least = -180, most = 180)
        Optional<Amount> guideAngle_deg,

        @Help("Distance of the pulley centres") @Limits(least = 20, most = 200)
        Optional<Amount> pulleyDistance_mm,

        @Help("Teeth of the guide pulley") @Limits(least = 8, most = 24)
        Optional<Amount> guide_teeth,

        @Help("Teeth of the tension pulley") @Limits(least = 8, most = 24)
        Optional<Amount> tension_teeth,

        @Help("Cage angle at the forward stop") @Limits(least = -270, most = 90)
        Optional<Amount> stopForward_deg,

        @Help("Cage angle at the rearward stop") @Limits(least = -270, most = 90)
        Optional<Amount> stopRearward_deg,

        @Help("Whether the upper pivot turns") @Default("\"fixed\"")
        UpperPivot upperPivot,

        @Help("Turn of the upper pivot at the smallest cog") @Limits(least = -90, most = 90)
        Optional<Amount> upperPivotSmallest_deg,

        @Help("Turn of the upper pivot at the largest cog") @Limits(least = -90, most = 90)
        Optional<Amount> upperPivotLargest_deg,

        @Help("Side travel beyond the smallest cog") @Limits(least = 0, most = 20)
        Optional<Amount> overshootSmallest_mm,

        @Help("Side travel beyond the largest cog") @Limits(least = 0, most = 20)
        Optional<Amount> overshootLargest_mm,

        @Help("Side travel kept for the tolerance of the hanger") @Limits(least = 0, most = 20) @Default("0")
        Amount hangerTolerance_mm,

        @Help("Capacity declared by whoever makes it") @Limits(least = 0, most = 120)
        Optional<Amount> declaredCapacity_teeth,

        @Help("Largest cog declared") @Limits(least = 5, most = 120)
        Optional<Amount> largestCog_teeth,

        @Help("Smallest cog declared") @Limits(least = 5, most = 120)
        Optional<Amount> smallestCog_teeth) {
    /** How the derailleur hangs on the frame. */
    public enum UpperPivot {
        FIXED,
        TURNS
    }

    public static final Field<Derailleur, Optional<Amount>> OVERSHOOT_SMALLEST =
            Field.of(Derailleur.class, "overshootSmallest_mm", Derailleur::overshootSmallest_mm);
    public static final Field<Derailleur, Optional<Amount>> OVERSHOOT_LARGEST =
            Field.of(Derailleur.class, "overshootLargest_mm", Derailleur::overshootLargest_mm);
    public static final Field<Derailleur, Amount> HANGER_TOLERANCE =
            Field.of(Derailleur.class, "hangerTolerance_mm", Derailleur::hangerTolerance_mm);
    public static final Field<Derailleur, Optional<Amount>> DECLARED_CAPACITY =
            Field.of(Derailleur.class, "declaredCapacity_teeth", Derailleur::declaredCapacity_teeth);
}
