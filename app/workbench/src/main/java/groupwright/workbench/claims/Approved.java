package groupwright.workbench.claims;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Quantity;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Address;
import groupwright.definition.record.Approval;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.Invalid;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.Reader;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.claims.Rest.InputChange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** What a claim was approved on last, beside what stands there today. */
final class Approved {
    private static final String IS = " = ";

    private final View view;
    private final Reader reader;
    private final Map<String, ApprovedAnswer> answers = new LinkedHashMap<>();

    Approved(View view, Reader reader, Claim claim) {
        this.view = view;
        this.reader = reader;
        last(claim).ifPresent(approval -> approval.answers().forEach(answer -> answers.put(answer.figure(), answer)));
    }

    /** The approval that counts; nothing where none was given. */
    static Optional<Approval> last(Claim claim) {
        return claim.approvals().isEmpty()
                ? Optional.empty()
                : Optional.of(claim.approvals().get(claim.approvals().size() - 1));
    }

    /**
     * What was approved for a question of today. Where the subject was another then (another lead concept), the answer of the
     * same figure that nobody asks for today.
     */
    Optional<ApprovedAnswer> then(Ask ask, List<Ask> today) {
        Optional<ApprovedAnswer> same = Optional.ofNullable(answers.get(ask.toString()));
        List<String> asked = today.stream().map(Ask::toString).toList();
        return same.or(() -> answers.values().stream()
                .filter(answer -> !asked.contains(answer.figure()))
                .filter(answer -> answer.figure().startsWith(ask.figure().id() + " "))
                .findFirst());
    }

    /** How an answer stands to what was approved. */
    Rest.Move move(Ask ask, Answer now, Optional<ApprovedAnswer> then) {
        if (answers.isEmpty()) {
            return Rest.Move.NOT_APPROVED;
        } else if (then.isEmpty() || !then.get().figure().equals(ask.toString())) {
            return Rest.Move.MOVED;
        } else if (!differs(ask, now, then.get())) {
            return Rest.Move.SAME;
        }
        boolean newer = then.get().formulaVersion() != ask.figure().version();
        return newer && inputs(ask, then.get()).isEmpty() ? Rest.Move.RECALCULATED : Rest.Move.MOVED;
    }

    private static boolean differs(Ask ask, Answer now, ApprovedAnswer then) {
        if (now instanceof Quantity quantity && number(then).isPresent()) {
            return !quantity.unit().symbol().equals(then.unit())
                    || Math.abs(quantity.value() - number(then).get())
                            > ask.figure().resolution();
        }
        return !ValueText.of(now).equals(then.value());
    }

    private static Optional<Double> number(ApprovedAnswer then) {
        try {
            return Optional.of(Double.parseDouble(then.value()));
        } catch (NumberFormatException word) {
            return Optional.empty(); // a verdict or state, approved as a word
        }
    }

    /** What was approved, as the reader writes it; to the figure's own resolution. */
    ShownValue shown(ApprovedAnswer then) {
        Optional<Double> number = number(then);
        if (number.isEmpty()) {
            return new ShownValue(then.value(), then.unit());
        }
        int decimals = figure(then).map(ask -> ask.figure().decimals()).orElse(2);
        return new ShownValue(reader.number(number.get(), decimals), then.unit());
    }

    /** What was approved, with the name of its figure. */
    String named(ApprovedAnswer then) {
        String name = figure(then)
                .map(ask -> ask.figure().name() + " "
                        + then.figure().substring(ask.figure().id().length()).strip())
                .orElse(then.figure());
        return name + ": " + shown(then).text();
    }

    private Optional<Ask> figure(ApprovedAnswer then) {
        try {
            return Optional.of(FigureText.parse(then.figure()).resolve(view.catalogue(), Optional.empty()));
        } catch (Invalid gone) {
            return Optional.empty(); // the figure of then is no longer known; its value still is
        }
    }

    /** The inputs behind an answer that are not as they were approved, in the order of addresses. */
    List<InputChange> inputs(Ask ask, ApprovedAnswer then) {
        Map<String, String> before = new LinkedHashMap<>();
        then.inputs().forEach(line -> {
            int is = line.indexOf(IS);
            before.put(is < 0 ? line : line.substring(0, is), is < 0 ? "" : line.substring(is + IS.length()));
        });
        Map<String, Workings.FieldInput> now = new LinkedHashMap<>();
        view.trace(ask).forEach(input -> now.put(input.address().toString(), input));
        TreeSet<String> all = new TreeSet<>(before.keySet());
        all.addAll(now.keySet());
        List<InputChange> changes = new ArrayList<>();
        for (String address : all) {
            String was = Optional.ofNullable(before.get(address)).orElse("");
            String is = Optional.ofNullable(now.get(address))
                    .map(Workings.FieldInput::text)
                    .orElse("");
            String unit = Optional.ofNullable(now.get(address))
                    .map(Workings.FieldInput::unit)
                    .orElse("");
            if (!was.equals(is)) {
                Address.parse(address)
                        .ifPresent(at -> changes.add(new InputChange(
                                at, at.record() + " " + FieldLabel.of(at), text(was, unit), text(is, unit))));
            }
        }
        return changes;
    }

    private String text(String value, String unit) {
        if (value.isEmpty()) {
            return "–";
        }
        try {
            return new ShownValue(reader.exact(Double.parseDouble(value)), unit).text();
        } catch (NumberFormatException words) {
            return new ShownValue(value, unit).text(); // lists, names and choices stand as they were kept
        }
    }
}
