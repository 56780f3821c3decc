package groupwright.definition.record;

import java.util.Optional;

/** A climb that stands for a rider group's riding. */
public record Climb(
        @Help("Short id used in figures, for example steep-12")
        String id,

        @Help("What the climb is") @Default("\"\"") String name,

        @Help("Rise over horizontal distance") @Limits(least = 0, most = 60)
        Amount grade_pct,

        @Help("Length") @Limits(least = 0, most = 100) Optional<Amount> length_km,
        @Help("Surface in words") @Default("\"\"") String surface,

        @Help("Power the group rides it with") @Limits(least = 0, most = 1500)
        Optional<Amount> power_W)
        implements Item {
    public static final Field<Climb, Amount> GRADE = Field.of(Climb.class, "grade_pct", Climb::grade_pct);
    public static final Field<Climb, Optional<Amount>> POWER = Field.of(Climb.class, "power_W", Climb::power_W);
}
