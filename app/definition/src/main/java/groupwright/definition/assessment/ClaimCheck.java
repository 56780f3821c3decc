package groupwright.definition.assessment;

import groupwright.definition.assessment.ClaimFigures.Standing;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Inputs;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.Approval;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Project;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Support;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Compares a claim with what it rests on today and with what it rested on when it was approved. */
final class ClaimCheck {
    private final Inputs in;
    private final RecordId claim;
    private final Basis basis;
    private final List<Support> supports;

    ClaimCheck(Inputs in, RecordId claim) {
        this.in = in;
        this.claim = claim;
        this.supports = in.get(claim, Claim.SUPPORTS);
        this.basis = Basis.of(
                in.get(claim, Claim.WORDING),
                supports,
                in.get(claim, Claim.REQUIREMENTS),
                in.catalogue(),
                in.get(RecordId.PROJECT, Project.LEAD_CONCEPT));
    }

    Standing standing() {
        Claim.State state = in.get(claim, Claim.STATE);
        String retired = in.get(claim, Claim.RETIRED);
        if (state == Claim.State.WITHDRAWN || !retired.isEmpty()) {
            String reason = state == Claim.State.WITHDRAWN ? in.get(claim, Claim.STATE_REASON) : retired;
            return new Standing(ClaimState.WITHDRAWN, reason);
        } else if (basis.isEmpty()) {
            return new Standing(ClaimState.UNSUPPORTED, "it rests on nothing");
        }
        List<String> lacking = lacking();
        if (state == Claim.State.PROPOSED) {
            return new Standing(ClaimState.PROPOSED, String.join("; ", lacking));
        } else if (!lacking.isEmpty()) {
            return new Standing(ClaimState.UNSUPPORTED, String.join("; ", lacking));
        }
        List<Approval> approvals = in.get(claim, Claim.APPROVALS);
        return sinceApproval(approvals.get(approvals.size() - 1));
    }

    /** What it should rest on and cannot, because it is broken or missing. */
    private List<String> lacking() {
        List<String> lacking = new ArrayList<>(basis.broken());
        for (Map.Entry<String, Ask> entry : basis.asks().entrySet()) {
            Answer answer = ask(entry.getValue());
            if (answer instanceof Missing missing) {
                lacking.add(entry.getKey() + " has no answer: "
                        + missing.inputs().get(0).address() + ", "
                        + missing.inputs().get(0).remedy());
            } else if (answer instanceof Verdict verdict && verdict.outcome() == Verdict.Outcome.MISSING_INPUT) {
                lacking.add(
                        verdict.missing().isEmpty()
                                ? entry.getKey() + " is missing input"
                                : entry.getKey() + " is missing input: "
                                        + verdict.missing().get(0).address());
            }
        }
        return lacking;
    }

    private Standing sinceApproval(Approval approval) {
        List<String> changed = new ArrayList<>(untrue());
        List<String> recalculated = new ArrayList<>();
        if (!approval.wording().equals(in.get(claim, Claim.WORDING))) {
            changed.add("the wording was \"" + approval.wording() + "\"");
        }
        Map<String, ApprovedAnswer> approved = new TreeMap<>();
        approval.answers().forEach(answer -> approved.put(answer.figure(), answer));
        for (Map.Entry<String, Ask> entry : basis.asks().entrySet()) {
            ApprovedAnswer then = approved.get(entry.getKey());
            if (then == null) {
                changed.add(entry.getKey() + " was not part of the approval");
                continue;
            }
            compare(entry.getValue(), then, changed, recalculated);
        }
        approved.keySet().stream()
                .filter(figure -> !basis.asks().containsKey(figure))
                .forEach(figure -> changed.add(figure + " was part of the approval and supports it no more"));
        if (!changed.isEmpty()) {
            return new Standing(ClaimState.CHANGED_SINCE_APPROVAL, String.join("; ", changed));
        } else if (!recalculated.isEmpty()) {
            return new Standing(ClaimState.RECALCULATED, String.join("; ", recalculated));
        }
        return new Standing(ClaimState.HOLDS, "");
    }

    private void compare(Ask ask, ApprovedAnswer then, List<String> changed, List<String> recalculated) {
        Answer now = ask(ask);
        if (!differs(ask, now, then)) {
            return;
        }
        String sentence = ask + " was " + then(ask, then) + ", is " + shown(ask, now);
        boolean sameInputs = then.formulaVersion() != ask.figure().version()
                && then.inputs().equals(in.trace(ask.figure().id(), ask.subject(), ask.parameters()));
        (sameInputs ? recalculated : changed).add(sentence);
    }

    private static boolean differs(Ask ask, Answer now, ApprovedAnswer then) {
        if (now instanceof Quantity quantity) {
            if (!quantity.unit().symbol().equals(then.unit())) {
                return true;
            }
            try {
                double was = Double.parseDouble(then.value());
                return !(Math.abs(quantity.value() - was) <= ask.figure().resolution());
            } catch (NumberFormatException noNumber) {
                return true; // what was approved was no number, so it is something else now
            }
        }
        return !ValueText.of(now).equals(then.value());
    }

    private static String then(Ask ask, ApprovedAnswer then) {
        try {
            return rounded(ask, Double.parseDouble(then.value())) + unit(then.unit());
        } catch (NumberFormatException word) {
            return then.value(); // a verdict or state, approved as a word
        }
    }

    private static String shown(Ask ask, Answer answer) {
        return answer instanceof Quantity quantity
                ? rounded(ask, quantity.value()) + unit(quantity.unit().symbol())
                : ValueText.of(answer);
    }

    /** To the figure's own resolution: what lies below it is no difference. */
    private static String rounded(Ask ask, double value) {
        return ValueText.number(BigDecimal.valueOf(value)
                .setScale(ask.figure().decimals(), RoundingMode.HALF_EVEN)
                .doubleValue());
    }

    private Answer ask(Ask ask) {
        return in.ask(ask.figure().id(), ask.subject(), ask.parameters());
    }

    private static String unit(String symbol) {
        return symbol.isEmpty() ? "" : " " + symbol;
    }

    /** Limits and verdicts that are broken today. */
    List<String> untrue() {
        List<String> untrue = new ArrayList<>();
        for (Support support : supports) {
            Optional<Limit> limit = Limit.of(claim, support);
            Ask ask = FigureText.parse(support.figure())
                    .resolve(in.catalogue(), in.get(RecordId.PROJECT, Project.LEAD_CONCEPT));
            if (limit.isPresent()) {
                Answer answer = ask(ask);
                Verdict verdict = limit.get().judge(answer, Band.NOT_STATED, ask.subject());
                if (verdict.outcome() != Verdict.Outcome.MEETS) {
                    untrue.add(ask + " is " + shown(ask, answer) + ", not "
                            + support.comparator()
                                    .map(ValueText::word)
                                    .orElse("")
                                    .replace('-', ' ') + " " + ValueText.of(support.limit()) + unit(support.unit()));
                }
            }
        }
        for (Ask ask : basis.asks().values()) {
            if (ask(ask) instanceof Verdict verdict && verdict.outcome() == Verdict.Outcome.MISSES) {
                untrue.add(ask.subject().ids().get(1) + " " + verdict.words());
            }
        }
        return untrue;
    }
}
