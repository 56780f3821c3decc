package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Unit;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import java.util.ArrayList;
import java.util.List;

/** How far requirements have come, alone and together, and whether needs are answered. */
public final class CoverageFigures implements FigureFamily {
    /** The rungs a requirement has reached: 1 or 0 at each. */
    public static final String LADDER = "ladder";

    /** The same, empty for a requirement that is not about the rider group. */
    public static final String LADDER_FOR_RIDERS = "ladder-for-riders";

    /** How many requirements have reached each rung. */
    public static final String COVERAGE = "coverage";

    /** The same for the requirements about one rider group. */
    public static final String COVERAGE_FOR_RIDERS = "coverage-for-riders";

    /** How many requirements answer a need. */
    public static final String ANSWERS = "answers";

    /** The figure whose values come from tests. */
    static final String TEST_RESULT = "test-result";

    private static final String SOURCE =
            "House rule: stated, measurable, calculated to meet, tested and met; ways of verification after"
                    + " ISO/IEC/IEEE 29148 (from memory).";

    @Override
    public List<Figure> figures() {
        return List.of(
                Figure.named(LADDER, "How far it has come")
                        .of(Scope.CONCEPT, Scope.REQUIREMENT)
                        .level(Level.COVERAGE)
                        .formula(
                                "1 at each rung reached: stated; measurable, when every criterion names a figure; calculated"
                                        + " to meet, when the verdict meets for certain; tested and met, when a test result is"
                                        + " among what meets")
                        .source(SOURCE)
                        .leavesOut("Whether a test is still valid after a change of the concept.")
                        .example("ladder C-901 R-901", "stated=1 measurable=1 calculated=1 tested=0")
                        .computedBy(CoverageFigures::ladder),
                Figure.named(LADDER_FOR_RIDERS, "How far it has come for a rider group")
                        .of(Scope.CONCEPT, Scope.RIDERS, Scope.REQUIREMENT)
                        .level(Level.COVERAGE)
                        .uses(LADDER)
                        .formula("the ladder of a requirement that names the rider group, or names none")
                        .source(SOURCE)
                        .example("ladder-for-riders C-901 G-901 R-901", "stated=1 measurable=1 calculated=1 tested=0")
                        .computedBy(CoverageFigures::ladderForRiders),
                Figure.named(COVERAGE, "Coverage")
                        .of(Scope.CONCEPT)
                        .level(Level.COVERAGE)
                        .uses(LADDER)
                        .formula("sum of the ladders of all requirements that are not parked or retired")
                        .source(SOURCE)
                        .example("coverage C-901", "stated=1 measurable=1 calculated=1 tested=0")
                        .computedBy(in -> in.sum(LADDER, RecordKinds.REQUIREMENT, in.subject())),
                Figure.named(COVERAGE_FOR_RIDERS, "Coverage for a rider group")
                        .of(Scope.CONCEPT, Scope.RIDERS)
                        .level(Level.COVERAGE)
                        .uses(LADDER_FOR_RIDERS)
                        .formula("sum of the ladders of all requirements about the rider group")
                        .source(SOURCE)
                        .example("coverage-for-riders C-901 G-901", "stated=1 measurable=1 calculated=1 tested=0")
                        .computedBy(in -> in.sum(LADDER_FOR_RIDERS, RecordKinds.REQUIREMENT, in.subject())),
                Figure.named(ANSWERS, "Requirements that answer it")
                        .of(Scope.NEED)
                        .level(Level.COVERAGE)
                        .formula("number of requirements in use that name the need")
                        .source(SOURCE)
                        .example("answers N-901", "1")
                        .computedBy(CoverageFigures::answers));
    }

    private static Answer ladder(Inputs in) {
        RecordId requirement = in.subject(Scope.REQUIREMENT);
        if (!counts(in, requirement)) {
            return new Series(Unit.NONE, List.of());
        }
        List<String> criteria = in.items(requirement, Requirement.CRITERIA);
        boolean measurable = !criteria.isEmpty() && criteria.stream().allMatch(id -> hasFigure(in, requirement, id));
        boolean calculated = measurable
                && in.ask(VerdictFigures.VERDICT, in.subject()) instanceof Verdict verdict
                && verdict.meetsForCertain();
        boolean tested = calculated && criteria.stream().anyMatch(id -> isTested(in, requirement, id));
        List<Series.At> rungs = new ArrayList<>();
        for (Rung rung : Rung.values()) {
            boolean reached = switch (rung) {
                case STATED -> true;
                case MEASURABLE -> measurable;
                case CALCULATED -> calculated;
                case TESTED -> tested;
            };
            rungs.add(new Series.At(rung.word(), reached ? 1 : 0));
        }
        return new Series(Unit.NONE, rungs);
    }

    private static boolean counts(Inputs in, RecordId requirement) {
        return in.get(requirement, Requirement.RETIRED).isEmpty()
                && in.get(requirement, Requirement.STATE) != Requirement.State.PARKED;
    }

    private static boolean hasFigure(Inputs in, RecordId requirement, String criterion) {
        return in.item(requirement, Requirement.CRITERIA, criterion, Criterion.FIGURE)
                .flatMap(in.catalogue()::find)
                .isPresent();
    }

    private static boolean isTested(Inputs in, RecordId requirement, String criterion) {
        if (!in.item(requirement, Requirement.CRITERIA, criterion, Criterion.FIGURE)
                .orElse("")
                .equals(TEST_RESULT)) {
            return false;
        }
        Settings which = Settings.NONE.with("criterion", criterion);
        return in.ask(VerdictFigures.CRITERION_VERDICT, in.subject(), which) instanceof Verdict verdict
                && verdict.meetsForCertain();
    }

    private static Answer ladderForRiders(Inputs in) {
        RecordId requirement = in.subject(Scope.REQUIREMENT);
        List<RecordId> riders = in.get(requirement, Requirement.RIDERS);
        if (!riders.isEmpty() && !riders.contains(in.subject(Scope.RIDERS))) {
            return new Series(Unit.NONE, List.of());
        }
        return in.ask(LADDER, Subject.of(in.subject(Scope.CONCEPT), requirement));
    }

    private static Answer answers(Inputs in) {
        long count = in.referring(Requirement.ANSWERS, in.subject(Scope.NEED)).stream()
                .filter(requirement -> in.get(requirement, Requirement.RETIRED).isEmpty())
                .count();
        return Quantity.of(count, Unit.NONE);
    }
}
