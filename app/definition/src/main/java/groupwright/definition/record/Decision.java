package groupwright.definition.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What was decided, between which options, by which criteria, and why. */
public record Decision(
        RecordId id,
        @Help("Short name") @Required String title,
        @Help("The question that was decided") @Required String question,
        @Help("Between what") @Default("[]") List<Option> options,
        @Help("By what, with weights") @Default("[]") List<Weighing> criteria,

        @Help("How each option did by each criterion") @Default("[]")
        List<Score> scores,

        @Help("Id of the chosen option; empty while open") @Default("\"\"")
        String choice,

        @Help("Why") @Default("\"\"") String reason,
        @Help("Who decided, by role") @Default("\"\"") String by,
        @Help("When") Optional<LocalDate> date,

        @Help("Requirements it rests on or changes") @RefersTo(Requirement.class) @Default("[]")
        List<RecordId> requirements,

        @Help("Why it no longer stands; empty while it does") @Default("\"\"")
        String retired)
        implements Entry {
    public Decision {
        options = List.copyOf(options);
        criteria = List.copyOf(criteria);
        scores = List.copyOf(scores);
        requirements = List.copyOf(requirements);
        ItemIds.check("options", options);
        ItemIds.check("criteria", criteria);
        ItemIds.check("scores", scores);
        String chosen = choice;
        if (!choice.isEmpty()
                && options.stream().noneMatch(option -> option.id().equals(chosen))) {
            throw new Invalid("choice", "\"" + choice + "\" is none of the options", "write the id of an option");
        }
    }

    /** One thing that could be chosen. */
    public record Option(
            @Help("Short id") String id,
            @Help("What it is") @Required String name,

            @Help("The concept it stands for") @RefersTo(Concept.class)
            Optional<RecordId> concept)
            implements Item {}

    /** A criterion of a decision. */
    public record Weighing(
            @Help("Short id") String id,
            @Help("What counts") @Required String name,

            @Help("How much it counts") @Limits(least = 0, most = 100)
            Amount weight_pct)
            implements Item {}

    /** How one option did by one criterion. */
    public record Score(
            @Help("Short id") String id,
            @Help("Id of the option") @Required String option,
            @Help("Id of the criterion") @Required String criterion,

            @Help("Score, more is better") @Limits(least = 0, most = 10)
            Amount score)
            implements Item {}
}
