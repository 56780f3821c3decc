package groupwright.workbench.cassettes;

import groupwright.drivetrain.search.Objective;
import java.util.Optional;

/** What is told of each cassette, in the order of columns. */
enum Measure {
    LARGEST_STEP("%", 1, Objective.LARGEST_STEP),
    UNEVENNESS("%", 2, Objective.UNEVENNESS),
    MISMATCH("mm", 2, Objective.MISMATCH),
    WAIT("s", 2),
    WEIGHT("g", 0, Objective.MASS),
    RANGE("%", 0, Objective.GEAR_RANGE);

    private final String unit;
    private final int decimals;
    private final Optional<Objective> objective;

    Measure(String unit, int decimals, Objective objective) {
        this.unit = unit;
        this.decimals = decimals;
        this.objective = Optional.of(objective);
    }

    Measure(String unit, int decimals) {
        this.unit = unit;
        this.decimals = decimals;
        this.objective = Optional.empty();
    }

    static Measure of(Objective objective) {
        for (Measure measure : values()) {
            if (measure.objective.filter(objective::equals).isPresent()) {
                return measure;
            }
        }
        throw new IllegalArgumentException("nothing measures " + objective);
    }

    String unit() {
        return unit;
    }

    int decimals() {
        return decimals;
    }

    Objective.Better better() {
        return objective.map(Objective::better).orElse(Objective.Better.LOWER);
    }

    /** The value of a cassette, in the unit. */
    double of(Candidate candidate) {
        return objective.map(candidate.found().values()::in).orElseGet(candidate::longestWaitS);
    }

    /** So that less is always better. */
    double cost(Candidate candidate) {
        return better() == Objective.Better.LOWER ? of(candidate) : -of(candidate);
    }
}
