package groupwright.definition.record;

import java.util.List;

/** What marketing wants to say, what it rests on, and who approved it. */
public record Claim(
        RecordId id,

        @Help("The wording; numbers as live figures, for example {{gear-range C-002}}") @Required
        String wording,

        @Help("Where it is said, for example launch page") @Default("\"\"")
        String channel,

        @Help("What it rests on, in words") @Default("\"\"") String basis,

        @Help("Figures and limits it rests on") @Default("[]")
        List<Support> supports,

        @Help("Requirements whose verdict it rests on") @RefersTo(Requirement.class) @Default("[]")
        List<RecordId> requirements,

        @Help("Proposed, approved or withdrawn") @Default("\"proposed\"")
        State state,

        @Help("Why it stands so") @Default("\"\"") String stateReason,

        @Help("Approvals given, each with what it rested on; the last one counts") @Default("[]")
        List<Approval> approvals,

        @Help("Why it is no longer used; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    /** What was decided about the claim. */
    public enum State {
        PROPOSED,
        APPROVED,
        WITHDRAWN
    }

    public Claim {
        supports = List.copyOf(supports);
        requirements = List.copyOf(requirements);
        approvals = List.copyOf(approvals);
        ItemIds.check("supports", supports);
        ItemIds.check("approvals", approvals);
        if (state == State.APPROVED && approvals.isEmpty()) {
            throw new Invalid("approvals", "an approved claim has no approval", "approve it, or write proposed");
        }
    }

    public static final Field<Claim, String> WORDING = Field.of(Claim.class, "wording", Claim::wording);
    public static final Field<Claim, List<Support>> SUPPORTS = Field.of(Claim.class, "supports", Claim::supports);
    public static final Field<Claim, List<RecordId>> REQUIREMENTS =
            Field.of(Claim.class, "requirements", Claim::requirements);
    public static final Field<Claim, State> STATE = Field.of(Claim.class, "state", Claim::state);
    public static final Field<Claim, List<Approval>> APPROVALS = Field.of(Claim.class, "approvals", Claim::approvals);

    public static final Field<Claim, String> STATE_REASON = Field.of(Claim.class, "stateReason", Claim::stateReason);
    public static final Field<Claim, String> RETIRED = Field.of(Claim.class, "retired", Claim::retired);

    @Override
    public String title() {
        return wording;
    }
}
