package groupwright.definition.figure;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Approval;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Need;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import groupwright.definition.record.TestResult;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What is said about the product of the example project: a need, a requirement, a claim. */
final class ExampleStatements {
    private static final RecordId NEED = RecordId.of("N", 901);
    private static final RecordId REQUIREMENT = RecordId.of("R", 901);

    private ExampleStatements() {}

    static Need need() {
        return new Need(
                NEED,
                "Up the wall and down the valley with one bike.",
                List.of(ExampleProject.RIDERS),
                Need.Source.RIDE,
                Need.Importance.MUST,
                Optional.of(LocalDate.of(2025, 6, 14)),
                List.of(),
                "",
                "");
    }

    static Requirement requirement() {
        return new Requirement(
                REQUIREMENT,
                Requirement.Kind.FUNCTION,
                "Enough range",
                "The gear range shall be at least 500 %.",
                "",
                List.of(NEED),
                List.of(),
                List.of(),
                List.of(new Criterion(
                        "k1",
                        "gear-range",
                        Settings.NONE,
                        Criterion.Comparator.AT_LEAST,
                        Amount.of(500),
                        Optional.empty(),
                        "%",
                        Optional.empty())),
                Requirement.Verification.ANALYSIS,
                5,
                "",
                Requirement.RiderSafety.NO,
                List.of(new TestResult(
                        "t1",
                        ExampleProject.CONCEPT,
                        "lever-force",
                        Amount.of(22),
                        "N",
                        5,
                        "largest of five, on the largest cog",
                        Optional.of(LocalDate.of(2025, 11, 3)))),
                Requirement.State.AGREED,
                "",
                "");
    }

    static Claim claim() {
        String wording = "{{gear-range C-901}} range";
        return new Claim(
                RecordId.of("K", 901),
                wording,
                "launch page",
                "",
                List.of(),
                List.of(),
                Claim.State.APPROVED,
                "",
                List.of(new Approval(
                        "a1", "product manager", LocalDate.of(2025, 12, 1), wording, List.of(approvedRange()))),
                "");
    }

    private static ApprovedAnswer approvedRange() {
        return new ApprovedAnswer(
                "v1",
                "gear-range C-901",
                "600",
                "%",
                1,
                List.of("C-901.cogs = 10, 12, 15, 18, 21, 25, 30", "C-901.excludedGears = x1", "C-901.rings = 40, 20"));
    }
}
