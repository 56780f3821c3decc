package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Direction;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.FigureFamily;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Level;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Parameter;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import java.util.List;
import java.util.Optional;

/** Verdicts on requirements. */
public final class VerdictFigures implements FigureFamily {
    /** The worst verdict over all criteria, rider groups and bikes of a requirement. */
    public static final String VERDICT = "verdict";

    /** The same for one criterion. */
    public static final String CRITERION_VERDICT = "criterion-verdict";

    /** The same for one rider group. */
    public static final String VERDICT_FOR_RIDERS = "verdict-for-riders";

    private static final String SOURCE =
            "Comparison of a value with its limit; a target inside the band is too close to"
                    + " call. ISO/IEC/IEEE 29148 asks that a requirement be verifiable (from memory).";

    @Override
    public List<Figure> figures() {
        return List.of(
                Figure.named(CRITERION_VERDICT, "Verdict on a criterion")
                        .of(Scope.CONCEPT, Scope.REQUIREMENT)
                        .with(Parameter.word("criterion", "the id of a criterion, for example criterion=k1"))
                        .better(Direction.NEITHER)
                        .level(Level.ASSESSMENT)
                        .formula(
                                "margin = value − target (at least) or target − value (at most); worst over rider groups"
                                        + " and bikes")
                        .source(SOURCE)
                        .leavesOut("Correlation between the criteria of one requirement.")
                        .example("criterion-verdict C-901 R-901 criterion=k1", "meets")
                        .computedBy(in -> new Judging(in, in.word("criterion")).judge(Optional.empty())),
                Figure.named(VERDICT, "Verdict")
                        .of(Scope.CONCEPT, Scope.REQUIREMENT)
                        .level(Level.ASSESSMENT)
                        .uses(CRITERION_VERDICT)
                        .formula("the worst of the verdicts on the criteria")
                        .source(SOURCE)
                        .example("verdict C-901 R-901", "meets")
                        .computedBy(VerdictFigures::overall),
                Figure.named(VERDICT_FOR_RIDERS, "Verdict for a rider group")
                        .of(Scope.CONCEPT, Scope.RIDERS, Scope.REQUIREMENT)
                        .level(Level.ASSESSMENT)
                        .formula("the worst of the verdicts on the criteria, looking at this rider group only")
                        .source(SOURCE)
                        .example("verdict-for-riders C-901 G-901 R-901", "meets")
                        .computedBy(VerdictFigures::forRiders));
    }

    private static Answer overall(Inputs in) {
        Subject subject = in.subject();
        return worst(in, id -> (Verdict)
                in.ask(CRITERION_VERDICT, subject, groupwright.definition.record.Settings.NONE.with("criterion", id)));
    }

    private static Answer forRiders(Inputs in) {
        Optional<RecordId> riders = Optional.of(in.subject(Scope.RIDERS));
        return worst(in, id -> new Judging(in, id).judge(riders));
    }

    private static Answer worst(Inputs in, java.util.function.Function<String, Verdict> judge) {
        RecordId requirement = in.subject(Scope.REQUIREMENT);
        List<String> criteria = in.items(requirement, Requirement.CRITERIA);
        if (criteria.isEmpty()) {
            MissingInput input = new MissingInput(
                    Address.of(requirement, "criteria"),
                    "nothing says how it is measured; choose a figure and a target");
            return Limit.missing(Missing.of(input), in.subject());
        }
        return Worst.of(criteria.stream().map(judge).toList());
    }
}
