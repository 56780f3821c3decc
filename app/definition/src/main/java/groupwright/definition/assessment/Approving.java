package groupwright.definition.assessment;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.ledger.Ledger;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Approval;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Approves claims and takes them back. */
public final class Approving {
    private Approving() {}

    /**
     * The claim as approved: with every answer it rests on today and the inputs behind each.
     *
     * @param view answers about the project as it is
     * @param by who approves, by role
     * @throws Invalid if it rests on nothing, on something missing, or on something that is not true; says what
     */
    public static Claim approve(View view, RecordId id, String by, LocalDate date) {
        Claim claim = view.definition()
                .get(id, Claim.class)
                .orElseThrow(() -> new Invalid("", "there is no claim " + id, "add it first"));
        if (!claim.retired().isEmpty()) {
            throw new Invalid("retired", id + " is no longer used: " + claim.retired(), "approve another claim");
        }
        Basis basis =
                Basis.of(claim, view.catalogue(), view.definition().project().leadConcept());
        if (basis.isEmpty()) {
            throw new Invalid("supports", id + " rests on nothing", "name a figure or a requirement it rests on");
        } else if (!basis.broken().isEmpty()) {
            throw new Invalid("supports", basis.broken().get(0), "mend it before approving " + id);
        }
        List<ApprovedAnswer> answers = new ArrayList<>();
        for (Map.Entry<String, Ask> entry : basis.asks().entrySet()) {
            answers.add(answer(view, entry.getValue(), "v" + (answers.size() + 1)));
        }
        Claim approved = withApproval(claim, new Approval(nextId(claim), by, date, claim.wording(), answers));
        requireHolding(view, approved);
        return approved;
    }

    /** The first of a1, a2 … from the number of approvals on that none has. */
    private static String nextId(Claim claim) {
        Set<String> taken = claim.approvals().stream().map(Approval::id).collect(Collectors.toSet());
        int number = claim.approvals().size() + 1;
        while (taken.contains("a" + number)) {
            number++;
        }
        return "a" + number;
    }

    /** What is approved must hold at that moment: a limit that is broken already is no basis. */
    private static void requireHolding(View view, Claim approved) {
        Definition with = view.definition().with(approved);
        View after =
                view instanceof Ledger ledger ? ledger.fork(with) : new Ledger(view.catalogue(), with, Ledger.DEEPEST);
        Ask state = FigureText.parse(ClaimFigures.CLAIM_STATE + " " + approved.id())
                .resolve(view.catalogue(), Optional.empty());
        if (after.ask(state) instanceof Word word && !word.word().equals(ClaimState.HOLDS.word())) {
            throw new Invalid(
                    "supports", word.detail(), "change the wording or the limit before approving " + approved.id());
        }
    }

    private static ApprovedAnswer answer(View view, Ask ask, String id) {
        Answer answer = view.ask(ask);
        boolean missing = answer instanceof Missing
                || answer instanceof Verdict verdict && verdict.outcome() == Verdict.Outcome.MISSING_INPUT;
        if (missing) {
            throw new Invalid("supports", ask + " has no answer: " + ValueText.of(answer), "fill that in first");
        }
        List<String> inputs =
                view.trace(ask).stream().map(Workings.FieldInput::line).toList();
        String unit = answer instanceof Quantity quantity ? quantity.unit().symbol() : "";
        return new ApprovedAnswer(
                id, ask.toString(), ValueText.of(answer), unit, ask.figure().version(), inputs);
    }

    private static Claim withApproval(Claim claim, Approval approval) {
        List<Approval> approvals = new ArrayList<>(claim.approvals());
        approvals.add(approval);
        return decided(claim, Claim.State.APPROVED, "", approvals);
    }

    private static Claim decided(Claim claim, Claim.State state, String reason, List<Approval> approvals) {
        return new Claim(
                claim.id(),
                claim.wording(),
                claim.channel(),
                claim.basis(),
                claim.supports(),
                claim.requirements(),
                state,
                reason,
                approvals,
                claim.retired());
    }

    /**
     * The claim taken back; its approvals stay to be read.
     *
     * @param reason why, not empty
     */
    public static Claim withdraw(Claim claim, String reason) {
        if (reason.isBlank()) {
            throw new Invalid(
                    "stateReason", "a withdrawn claim needs a reason", "write why " + claim.id() + " is taken back");
        }
        return decided(claim, Claim.State.WITHDRAWN, reason, claim.approvals());
    }

    /** The claim put forward anew, to be approved again; its approvals stay to be read. */
    public static Claim propose(Claim claim) {
        return decided(claim, Claim.State.PROPOSED, "", claim.approvals());
    }
}
