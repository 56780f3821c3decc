package groupwright.definition.record;

import java.util.Optional;

/**
 * The rear derailleur as a mechanism; coordinates from the rear axle in the plane of the chain, x forward, y up, angles
 * from forward, counter-clockwise. Pivot, path and stops are stated on one hanger and move with that of each bike.
 */
public record Derailleur(
        @Help("Cage pivot at the smallest cog, forward of the axle") @Limits(least = -150, most = 150)
        Optional<Amount> pivotX_mm,

        @Help("Cage pivot at the smallest cog, above the axle") @Limits(least = -200, most = 50)
        Optional<Amount> pivotY_mm,

        @Help("Hanger bolt for which the pivot is stated, forward of the axle") @Limits(least = -60, most = 60)
        Optional<Amount> hangerX_mm,

        @Help("Hanger bolt for which the pivot is stated, above the axle") @Limits(least = -80, most = 20)
        Optional<Amount> hangerY_mm,

        @Help("Turn of the hanger stop for which the pivot is stated") @Limits(least = -90, most = 90)
        Optional<Amount> hangerAngle_deg,

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

    public static final Field<Derailleur, Optional<Amount>> PIVOT_X =
            Field.of(Derailleur.class, "pivotX_mm", Derailleur::pivotX_mm);
    public static final Field<Derailleur, Optional<Amount>> PIVOT_Y =
            Field.of(Derailleur.class, "pivotY_mm", Derailleur::pivotY_mm);
    public static final Field<Derailleur, Optional<Amount>> HANGER_X =
            Field.of(Derailleur.class, "hangerX_mm", Derailleur::hangerX_mm);
    public static final Field<Derailleur, Optional<Amount>> HANGER_Y =
            Field.of(Derailleur.class, "hangerY_mm", Derailleur::hangerY_mm);
    public static final Field<Derailleur, Optional<Amount>> HANGER_ANGLE =
            Field.of(Derailleur.class, "hangerAngle_deg", Derailleur::hangerAngle_deg);
    public static final Field<Derailleur, Optional<Amount>> PATH_DIRECTION =
            Field.of(Derailleur.class, "pathDirection_deg", Derailleur::pathDirection_deg);
    public static final Field<Derailleur, Optional<Amount>> PATH_SLOPE =
            Field.of(Derailleur.class, "pathSlope_deg", Derailleur::pathSlope_deg);
    public static final Field<Derailleur, Optional<Amount>> GUIDE_OFFSET =
            Field.of(Derailleur.class, "guideOffset_mm", Derailleur::guideOffset_mm);
    public static final Field<Derailleur, Optional<Amount>> GUIDE_ANGLE =
            Field.of(Derailleur.class, "guideAngle_deg", Derailleur::guideAngle_deg);
    public static final Field<Derailleur, Optional<Amount>> PULLEY_DISTANCE =
            Field.of(Derailleur.class, "pulleyDistance_mm", Derailleur::pulleyDistance_mm);
    public static final Field<Derailleur, Optional<Amount>> GUIDE_TEETH =
            Field.of(Derailleur.class, "guide_teeth", Derailleur::guide_teeth);
    public static final Field<Derailleur, Optional<Amount>> TENSION_TEETH =
            Field.of(Derailleur.class, "tension_teeth", Derailleur::tension_teeth);
    public static final Field<Derailleur, Optional<Amount>> STOP_FORWARD =
            Field.of(Derailleur.class, "stopForward_deg", Derailleur::stopForward_deg);
    public static final Field<Derailleur, Optional<Amount>> STOP_REARWARD =
            Field.of(Derailleur.class, "stopRearward_deg", Derailleur::stopRearward_deg);
    public static final Field<Derailleur, Optional<Amount>> UPPER_PIVOT_SMALLEST =
            Field.of(Derailleur.class, "upperPivotSmallest_deg", Derailleur::upperPivotSmallest_deg);
    public static final Field<Derailleur, Optional<Amount>> UPPER_PIVOT_LARGEST =
            Field.of(Derailleur.class, "upperPivotLargest_deg", Derailleur::upperPivotLargest_deg);
    public static final Field<Derailleur, UpperPivot> UPPER_PIVOT =
            Field.of(Derailleur.class, "upperPivot", Derailleur::upperPivot);
    public static final Field<Derailleur, Optional<Amount>> OVERSHOOT_SMALLEST =
            Field.of(Derailleur.class, "overshootSmallest_mm", Derailleur::overshootSmallest_mm);
    public static final Field<Derailleur, Optional<Amount>> OVERSHOOT_LARGEST =
            Field.of(Derailleur.class, "overshootLargest_mm", Derailleur::overshootLargest_mm);
    public static final Field<Derailleur, Amount> HANGER_TOLERANCE =
            Field.of(Derailleur.class, "hangerTolerance_mm", Derailleur::hangerTolerance_mm);
    public static final Field<Derailleur, Optional<Amount>> DECLARED_CAPACITY =
            Field.of(Derailleur.class, "declaredCapacity_teeth", Derailleur::declaredCapacity_teeth);
}
