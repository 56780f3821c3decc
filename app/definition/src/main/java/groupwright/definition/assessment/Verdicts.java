package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import java.util.List;
import java.util.Optional;

/** Verdicts on answers that are not the ledger's own, by the same comparison as those that are. */
public final class Verdicts {
    private Verdicts() {}

    /**
     * The verdict of a criterion on an answer.
     *
     * @param requirement that has the criterion
     * @param criterion what must be reached
     * @param answer what is compared
     * @param band how well it is known
     * @param subject what it is about
     */
    public static Verdict on(RecordId requirement, Criterion criterion, Answer answer, Band band, Subject subject) {
        Limit limit = new Limit(
                criterion.comparator(),
                criterion.target().value(),
                criterion.upper().map(Amount::value),
                criterion.unit(),
                Address.of(requirement, "criteria", criterion.id()));
        return limit.judge(answer, band, subject).ofCriterion(criterion.id());
    }

    /** The worst of several; nothing of none. */
    public static Optional<Verdict> worst(List<Verdict> verdicts) {
        return verdicts.stream().min(Worst.ORDER);
    }
}
