package groupwright.definition.record;

import java.util.Optional;

/** What is measured for a requirement and what it must reach. */
public record Criterion(
        @Help("Short id, for example k1") String id,

        @Help("The figure that measures it, by its id") @Required
        String figure,

        @Help("Parameters of the figure, for example {\"from-teeth\": 14}") @Default("{}")
        Settings parameters,

        @Help("At least, at most, or between target and upper")
        Comparator comparator,

        @Help("What it must reach") Amount target,
        @Help("Upper limit where the comparator is between") Optional<Amount> upper,
        @Help("Unit of the target") @Default("\"\"") String unit,
        @Help("What would be better still") Optional<Amount> stretch)
        implements Item {
    /** On which side of the target the good values lie. */
    public enum Comparator {
        AT_LEAST,
        AT_MOST,
        BETWEEN
    }

    public Criterion {
        if ((comparator == Comparator.BETWEEN) != upper.isPresent()) {
            throw new Invalid(
                    "upper",
                    comparator == Comparator.BETWEEN ? "between needs two limits" : "only between has an upper limit",
                    comparator == Comparator.BETWEEN ? "add upper" : "remove upper or write between");
        }
        if (upper.isPresent() && upper.get().value() < target.value()) {
            throw new Invalid("upper", "the upper limit lies below the target", "swap the two limits");
        }
    }

    public static final Field<Criterion, String> FIGURE = Field.of(Criterion.class, "figure", Criterion::figure);
    public static final Field<Criterion, Settings> PARAMETERS =
            Field.of(Criterion.class, "parameters", Criterion::parameters);
    public static final Field<Criterion, Comparator> COMPARATOR =
            Field.of(Criterion.class, "comparator", Criterion::comparator);
    public static final Field<Criterion, Amount> TARGET = Field.of(Criterion.class, "target", Criterion::target);
    public static final Field<Criterion, Optional<Amount>> UPPER = Field.of(Criterion.class, "upper", Criterion::upper);
    public static final Field<Criterion, String> UNIT = Field.of(Criterion.class, "unit", Criterion::unit);
}
