package groupwright.definition.record;

import java.util.List;

/** An answer as it stood when something was approved, with the inputs behind it. */
public record ApprovedAnswer(
        @Help("Short id, for example v1") String id,

        @Help("The figure with subject and parameters") @Required
        String figure,

        @Help("The answer: a number as its shortest exact text, or a word such as meets") @Required
        String value,

        @Help("Its unit") @Default("\"\"") String unit,

        @Help("Version of the formula") @Limits(least = 1, most = 1000000)
        int formulaVersion,

        @Help("Inputs behind it: address = value, one a line") @Default("[]")
        List<String> inputs)
        implements Item {
    public ApprovedAnswer {
        inputs = List.copyOf(inputs);
    }
}
