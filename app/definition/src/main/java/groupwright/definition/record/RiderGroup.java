package groupwright.definition.record;

import java.util.List;
import java.util.Optional;

/** Riders of one kind: who they are, how they ride, on which wheel, up which climbs. */
public record RiderGroup(
        RecordId id,
        @Help("Short name of the group") @Required String title,

        @Help("Who they are and what they ask of a drivetrain") @Default("\"\"")
        String description,

        @Help("How much this group counts, 1 to 10") @Limits(least = 1, most = 10) @Default("5")
        int importance,

        @Help("Rider in clothes with shoes and helmet") @Limits(least = 20, most = 250)
        Optional<Amount> riderMass_kg,

        @Help("Bike ready to ride") @Limits(least = 3, most = 100)
        Optional<Amount> bikeMass_kg,

        @Help("Bags and water") @Limits(least = 0, most = 150) @Default("0")
        Amount luggage_kg,

        @Help("Power the rider holds for five minutes") @Limits(least = 0, most = 1000)
        Optional<Amount> powerFiveMinutes_W,

        @Help("Power the rider holds for an hour") @Limits(least = 0, most = 700)
        Optional<Amount> powerHour_W,

        @Help("Power the rider holds all day") @Limits(least = 0, most = 500)
        Optional<Amount> powerAllDay_W,

        @Help("Largest torque at the cranks") @Limits(least = 0, most = 500)
        Optional<Amount> peakTorque_Nm,

        @Help("Below this cadence the rider grinds") @Limits(least = 10, most = 120)
        Optional<Amount> cadenceLeast_rpm,

        @Help("Lower end of the preferred cadence") @Limits(least = 10, most = 150)
        Optional<Amount> cadencePreferredLow_rpm,

        @Help("Upper end of the preferred cadence") @Limits(least = 10, most = 180)
        Optional<Amount> cadencePreferredHigh_rpm,

        @Help("Fastest cadence the rider keeps up") @Limits(least = 20, most = 200)
        Optional<Amount> cadenceMost_rpm,

        @Help("Length of the cranks") @Limits(least = 100, most = 220)
        Optional<Amount> crankLength_mm,

        @Help("Bead seat diameter of the rim, ISO 5775") @Limits(least = 150, most = 800)
        Optional<Amount> beadSeat_mm,

        @Help("Width of the tyre, ISO 5775") @Limits(least = 15, most = 150)
        Optional<Amount> tyre_mm,

        @Help("Roll-out of one wheel turn as measured under the rider; used instead of the two above")
        @Limits(least = 300, most = 3500)
        Optional<Amount> rollOut_mm,

        @Help("Roll-out under load as a share of that by rim and tyre") @Limits(least = 0.8, most = 1.1) @Default("1")
        Amount loadedFactor,

        @Help("Coefficient of rolling resistance") @Limits(least = 0, most = 0.2)
        Optional<Amount> rollingResistance,

        @Help("Drag area, drag coefficient times frontal area") @Limits(least = 0.05, most = 2)
        Optional<Amount> dragArea_m2,

        @Help("Share of crank power that reaches the wheel") @Limits(least = 0.5, most = 1) @Default("0.96")
        Amount efficiency,

        @Help("Climbs that stand for the group's riding") @Default("[]")
        List<Climb> climbs,

        @Help("How much of the distance lies on which grade") @Default("[]")
        List<GradeBand> terrain,

        @Help("Speed the group does not exceed downhill") @Limits(least = 5, most = 150)
        Optional<Amount> downhillCap_kmh,

        @Help("Share of riding in dust") @Limits(least = 0, most = 100) @Default("0")
        Amount dust_pct,

        @Help("Share of riding in mud") @Limits(least = 0, most = 100) @Default("0")
        Amount mud_pct,

        @Help("Share of riding below freezing") @Limits(least = 0, most = 100) @Default("0")
        Amount cold_pct,

        @Help("Distance ridden in a year") @Limits(least = 0, most = 100000)
        Optional<Amount> yearly_km,

        @Help("Torque a motor adds at the cranks") @Limits(least = 0, most = 300)
        Optional<Amount> assistTorque_Nm,

        @Help("Where these numbers come from") @Default("\"\"")
        String source,

        @Help("Why the group is no longer used; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    public RiderGroup {
        climbs = List.copyOf(climbs);
        terrain = List.copyOf(terrain);
        ItemIds.check("climbs", climbs);
        ItemIds.check("terrain", terrain);
        if (dust_pct.value() + mud_pct.value() + cold_pct.value() > 100) {
            throw new Invalid("dust_pct", "dust, mud and cold add up to more than 100 %", "lower one of the shares");
        }
    }

    public static final Field<RiderGroup, Optional<Amount>> RIDER_MASS =
            Field.of(RiderGroup.class, "riderMass_kg", RiderGroup::riderMass_kg);
    public static final Field<RiderGroup, Optional<Amount>> BIKE_MASS =
            Field.of(RiderGroup.class, "bikeMass_kg", RiderGroup::bikeMass_kg);
    public static final Field<RiderGroup, Amount> LUGGAGE =
            Field.of(RiderGroup.class, "luggage_kg", RiderGroup::luggage_kg);
    public static final Field<RiderGroup, Optional<Amount>> POWER_HOUR =
            Field.of(RiderGroup.class, "powerHour_W", RiderGroup::powerHour_W);
    public static final Field<RiderGroup, Optional<Amount>> CADENCE_LEAST =
            Field.of(RiderGroup.class, "cadenceLeast_rpm", RiderGroup::cadenceLeast_rpm);
    public static final Field<RiderGroup, Optional<Amount>> CADENCE_PREFERRED_LOW =
            Field.of(RiderGroup.class, "cadencePreferredLow_rpm", RiderGroup::cadencePreferredLow_rpm);
    public static final Field<RiderGroup, Optional<Amount>> CADENCE_PREFERRED_HIGH =
            Field.of(RiderGroup.class, "cadencePreferredHigh_rpm", RiderGroup::cadencePreferredHigh_rpm);
    public static final Field<RiderGroup, Optional<Amount>> CADENCE_MOST =
            Field.of(RiderGroup.class, "cadenceMost_rpm", RiderGroup::cadenceMost_rpm);
    public static final Field<RiderGroup, Optional<Amount>> CRANK_LENGTH =
            Field.of(RiderGroup.class, "crankLength_mm", RiderGroup::crankLength_mm);
    public static final Field<RiderGroup, Optional<Amount>> BEAD_SEAT =
            Field.of(RiderGroup.class, "beadSeat_mm", RiderGroup::beadSeat_mm);
    public static final Field<RiderGroup, Optional<Amount>> TYRE =
            Field.of(RiderGroup.class, "tyre_mm", RiderGroup::tyre_mm);
    public static final Field<RiderGroup, Optional<Amount>> ROLL_OUT =
            Field.of(RiderGroup.class, "rollOut_mm", RiderGroup::rollOut_mm);
    public static final Field<RiderGroup, Amount> LOADED_FACTOR =
            Field.of(RiderGroup.class, "loadedFactor", RiderGroup::loadedFactor);
    public static final Field<RiderGroup, Optional<Amount>> ROLLING_RESISTANCE =
            Field.of(RiderGroup.class, "rollingResistance", RiderGroup::rollingResistance);
    public static final Field<RiderGroup, Optional<Amount>> DRAG_AREA =
            Field.of(RiderGroup.class, "dragArea_m2", RiderGroup::dragArea_m2);
    public static final Field<RiderGroup, Amount> EFFICIENCY =
            Field.of(RiderGroup.class, "efficiency", RiderGroup::efficiency);
    public static final Field<RiderGroup, Optional<Amount>> PEAK_TORQUE =
            Field.of(RiderGroup.class, "peakTorque_Nm", RiderGroup::peakTorque_Nm);
    public static final Field<RiderGroup, Optional<Amount>> ASSIST_TORQUE =
            Field.of(RiderGroup.class, "assistTorque_Nm", RiderGroup::assistTorque_Nm);
    public static final Field<RiderGroup, Amount> DUST = Field.of(RiderGroup.class, "dust_pct", RiderGroup::dust_pct);
    public static final Field<RiderGroup, Amount> MUD = Field.of(RiderGroup.class, "mud_pct", RiderGroup::mud_pct);
    public static final Field<RiderGroup, Amount> COLD = Field.of(RiderGroup.class, "cold_pct", RiderGroup::cold_pct);
    public static final Field<RiderGroup, String> RETIRED = Field.of(RiderGroup.class, "retired", RiderGroup::retired);
    public static final Field<RiderGroup, List<Climb>> CLIMBS =
            Field.of(RiderGroup.class, "climbs", RiderGroup::climbs);
    public static final Field<RiderGroup, List<GradeBand>> TERRAIN =
            Field.of(RiderGroup.class, "terrain", RiderGroup::terrain);
    public static final Field<RiderGroup, Optional<Amount>> DOWNHILL_CAP =
            Field.of(RiderGroup.class, "downhillCap_kmh", RiderGroup::downhillCap_kmh);
}
