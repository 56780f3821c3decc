package groupwright.definition.record;

import java.util.List;

/** One thing the groupset shall do, with how it is measured and proven. */
public record Requirement(
        RecordId id,
        @Help("What sort of requirement") Kind kind,
        @Help("Short name") @Required String title,

        @Help("The requirement as a sentence with shall") @Required
        String statement,

        @Help("Why it is asked") @Default("\"\"") String rationale,

        @Help("Needs it answers") @RefersTo(Need.class) @Default("[]")
        List<RecordId> answers,

        @Help("Rider groups it is measured for; empty means all") @RefersTo(RiderGroup.class) @Default("[]")
        List<RecordId> riders,

        @Help("Bikes it is measured on; empty means all") @RefersTo(Bike.class) @Default("[]")
        List<RecordId> bikes,

        @Help("What is measured and what it must reach") @Default("[]")
        List<Criterion> criteria,

        @Help("How it is verified, after ISO/IEC/IEEE 29148")
        Verification verification,

        @Help("How much it counts, 1 to 10") @Limits(least = 1, most = 10) @Default("5")
        int weight,

        @Help("Who answers for it") @Default("\"\"") String owner,

        @Help("Whether its failure can hurt a rider") @Default("\"no\"")
        RiderSafety riderSafety,

        @Help("What tests and inspections gave") @Default("[]")
        List<TestResult> results,

        @Help("Draft, agreed or parked") @Default("\"draft\"")
        State state,

        @Help("Why it stands so") @Default("\"\"") String stateReason,

        @Help("Why it is no longer asked; empty while it is") @Default("\"\"")
        String retired)
        implements Entry {
    /** What sort of requirement it is. */
    public enum Kind {
        FUNCTION,
        INTERFACE,
        FEEL,
        LOOK,
        NOISE,
        COST,
        SERVICE,
        COMPLIANCE
    }

    /** Ways of verification of ISO/IEC/IEEE 29148. */
    public enum Verification {
        ANALYSIS,
        INSPECTION,
        DEMONSTRATION,
        TEST
    }

    /** Whether failing can hurt a rider. */
    public enum RiderSafety {
        NO,
        YES
    }

    /** How settled it is; only agreed requirements get verdicts that count. */
    public enum State {
        DRAFT,
        AGREED,
        PARKED
    }

    public Requirement {
        answers = List.copyOf(answers);
        riders = List.copyOf(riders);
        bikes = List.copyOf(bikes);
        criteria = List.copyOf(criteria);
        results = List.copyOf(results);
        ItemIds.check("criteria", criteria);
        ItemIds.check("results", results);
    }

    public static final Field<Requirement, List<RecordId>> ANSWERS =
            Field.of(Requirement.class, "answers", Requirement::answers);
    public static final Field<Requirement, List<RecordId>> RIDERS =
            Field.of(Requirement.class, "riders", Requirement::riders);
    public static final Field<Requirement, List<RecordId>> BIKES =
            Field.of(Requirement.class, "bikes", Requirement::bikes);
    public static final Field<Requirement, List<Criterion>> CRITERIA =
            Field.of(Requirement.class, "criteria", Requirement::criteria);
    public static final Field<Requirement, List<TestResult>> RESULTS =
            Field.of(Requirement.class, "results", Requirement::results);
    public static final Field<Requirement, State> STATE = Field.of(Requirement.class, "state", Requirement::state);
    public static final Field<Requirement, String> RETIRED =
            Field.of(Requirement.class, "retired", Requirement::retired);
}
