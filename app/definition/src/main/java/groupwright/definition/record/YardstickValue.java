package groupwright.definition.record;

import java.time.LocalDate;
import java.util.Optional;

/** One value of a yardstick, with how it is known. */
public record YardstickValue(
        @Help("Short id") String id,

        @Help("The figure it compares with, by its id") @Required
        String figure,

        @Help("Parameters of the figure") @Default("{}") Settings parameters,
        @Help("The value") Amount value,
        @Help("Its unit") @Default("\"\"") String unit,
        @Help("State it holds for") @Default("\"\"") String configuration,
        @Help("When it was found") Optional<LocalDate> date,
        @Help("Measured by us, published, or guessed") Basis basis,

        @Help("Who measured or published it") @Default("\"\"")
        String source)
        implements Item {
    /** How the value is known. */
    public enum Basis {
        MEASURED,
        PUBLISHED,
        GUESSED
    }
}
