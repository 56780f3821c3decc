package groupwright.definition.record;

import java.time.LocalDate;
import java.util.List;

/** An approval of a claim, with the wording and every answer it rested on. */
public record Approval(
        @Help("Short id, for example a1") String id,
        @Help("Who approved, by role") @Required String by,
        @Help("When") LocalDate date,

        @Help("The wording as approved, before numbers were filled in") @Required
        String wording,

        @Help("The answers it rested on") @Default("[]") List<ApprovedAnswer> answers)
        implements Item {
    public Approval {
        answers = List.copyOf(answers);
        ItemIds.check("answers", answers);
    }
}
