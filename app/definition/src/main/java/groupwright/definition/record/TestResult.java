package groupwright.definition.record;

import java.time.LocalDate;
import java.util.Optional;

/** What a test, inspection or demonstration gave for one concept. */
public record TestResult(
        @Help("Short id, for example t1") String id,

        @Help("The concept that was tested") @RefersTo(Concept.class)
        RecordId concept,

        @Help("What was measured, a short word that criteria name, for example lever-force") @Required
        String quantity,

        @Help("What came out, with its limit of confidence if one was computed")
        Amount value,

        @Help("Unit of the value") @Default("\"\"") String unit,

        @Help("How many specimens, rides or shifts") @Limits(least = 0, most = 1e9) @Default("0")
        int sample,

        @Help("Method, confidence and what was seen") @Default("\"\"")
        String summary,

        @Help("Date of the result") Optional<LocalDate> date)
        implements Item {
    public static final Field<TestResult, RecordId> CONCEPT =
            Field.of(TestResult.class, "concept", TestResult::concept);
    public static final Field<TestResult, String> QUANTITY =
            Field.of(TestResult.class, "quantity", TestResult::quantity);
    public static final Field<TestResult, Amount> VALUE = Field.of(TestResult.class, "value", TestResult::value);
    public static final Field<TestResult, Optional<LocalDate>> DATE =
            Field.of(TestResult.class, "date", TestResult::date);
    public static final Field<TestResult, String> UNIT = Field.of(TestResult.class, "unit", TestResult::unit);
}
