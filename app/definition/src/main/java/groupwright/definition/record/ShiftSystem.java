package groupwright.definition.record;

import java.util.Optional;

/** How shifts are made: positions, cable pull or motor, force and tolerance. */
public record ShiftSystem(
        @Help("Positions of the rear shifter") @Limits(least = 1, most = 20)
        int positions,

        @Help("Cable or electronic") Actuation actuation,

        @Help("Cable pulled by one click") @Limits(least = 0.5, most = 10)
        Optional<Amount> pull_mm,

        @Help("Side travel of the derailleur for each mm of cable") @Limits(least = 0.3, most = 4)
        Optional<Amount> actuationRatio,

        @Help("Force at the lever") @Limits(least = 0, most = 200)
        Optional<Amount> leverForce_N,

        @Help("How far a cog position may be off") @Limits(least = 0, most = 3)
        Optional<Amount> indexTolerance_mm) {
    /** What moves the derailleur. */
    public enum Actuation {
        CABLE,
        ELECTRONIC
    }

    public static final Field<ShiftSystem, Integer> POSITIONS =
            Field.of(ShiftSystem.class, "positions", ShiftSystem::positions);
    public static final Field<ShiftSystem, Actuation> ACTUATION =
            Field.of(ShiftSystem.class, "actuation", ShiftSystem::actuation);
    public static final Field<ShiftSystem, Optional<Amount>> PULL =
            Field.of(ShiftSystem.class, "pull_mm", ShiftSystem::pull_mm);
    public static final Field<ShiftSystem, Optional<Amount>> ACTUATION_RATIO =
            Field.of(ShiftSystem.class, "actuationRatio", ShiftSystem::actuationRatio);
    public static final Field<ShiftSystem, Optional<Amount>> INDEX_TOLERANCE =
            Field.of(ShiftSystem.class, "indexTolerance_mm", ShiftSystem::indexTolerance_mm);
}
