package groupwright.workbench.claims;

import groupwright.definition.assessment.Asked;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Word;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.ApprovedAnswer;
import groupwright.definition.record.Claim;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Support;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.FieldWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the answers a claim rests on, then and now. */
final class RestReading {
    /** Whether the inputs behind an answer are compared too, which costs a walk through all of them. */
    enum Depth {
        VALUES,
        INPUTS
    }

    private final View view;
    private final Words words;
    private final Reader reader;
    private final AnswerText text;

    RestReading(View view, Words words) {
        this.view = view;
        this.words = words;
        this.reader = new Reader(words.locale());
        this.text = new AnswerText(reader);
    }

    /** In the order of wording, supports and requirements. */
    List<Rest> of(Claim claim, Depth depth) {
        List<Ask> asks = Asked.asks(view, claim);
        Approved approved = new Approved(view, reader, claim);
        List<Rest> rests = new ArrayList<>();
        for (Ask ask : asks) {
            rests.add(rest(claim, ask, approved, approved.then(ask, asks), depth));
        }
        return rests;
    }

    private Rest rest(Claim claim, Ask ask, Approved approved, Optional<ApprovedAnswer> then, Depth depth) {
        Answer now = view.ask(ask);
        Optional<Support> support = claim.supports().stream()
                .filter(one -> one.limit().isPresent())
                .filter(one -> Asked.ask(view, one).filter(ask::equals).isPresent())
                .findFirst();
        Optional<Verdict> verdict = now instanceof Verdict own
                ? Optional.of(own)
                : support.flatMap(one -> Asked.verdictOn(view, claim.id(), one));
        return new Rest(
                ask,
                name(ask),
                about(ask),
                then.map(approved::shown),
                shown(ask, now),
                kind(now),
                approved.move(ask, now, then),
                support.map(this::limit).orElse(""),
                verdict,
                leads(claim, ask),
                depth == Depth.INPUTS
                        ? then.map(one -> approved.inputs(ask, one)).orElse(List.of())
                        : List.of(),
                tip(now));
    }

    private static Rest.Kind kind(Answer now) {
        if (now instanceof Missing
                || now instanceof Verdict verdict && !verdict.missing().isEmpty()) {
            return Rest.Kind.MISSING;
        }
        return now instanceof Verdict || now instanceof Word ? Rest.Kind.WORD : Rest.Kind.NUMBER;
    }

    private ShownValue shown(Ask ask, Answer now) {
        ShownValue shown = text.of(ask, now);
        int remark = shown.unit().indexOf(" ("); // a remark belongs into the workings, not into a row
        return remark < 0 ? shown : new ShownValue(shown.value(), shown.unit().substring(0, remark));
    }

    private String tip(Answer now) {
        if (now instanceof Missing missing) {
            return FieldWords.sentenceCase(text.missing(missing)) + ".";
        } else if (now instanceof Verdict verdict && !verdict.missing().isEmpty()) {
            return FieldWords.sentenceCase(text.missing(new Missing(verdict.missing()))) + ".";
        }
        return "";
    }

    /** A verdict is called after its requirement, everything else after its figure. */
    private String name(Ask ask) {
        return requirement(ask)
                .filter(id -> ask.figure().id().equals("verdict"))
                .map(id -> words.text("rest.verdict", id))
                .orElse(ask.figure().name());
    }

    private static String about(Ask ask) {
        List<String> parts = new ArrayList<>();
        ask.subject().ids().forEach(id -> parts.add(id.text()));
        ask.givenParameters().values().forEach((name, value) -> parts.add(value.replace('-', ' ')));
        return String.join(", ", parts);
    }

    private String limit(Support support) {
        String value = new ShownValue(reader.exact(support.limit().orElseThrow().value()), support.unit()).text();
        return words.text(
                support.comparator().orElseThrow() == Support.Side.AT_LEAST ? "limit.atLeast" : "limit.atMost", value);
    }

    private static Optional<RecordId> requirement(Ask ask) {
        return ask.subject().get(Scope.REQUIREMENT);
    }

    /** The requirement it speaks of or that asks for it; else the concept. */
    private Optional<Address> leads(Claim claim, Ask ask) {
        return requirement(ask)
                .or(() -> Asked.by(view, ask).stream()
                        .map(by -> by.requirement().id())
                        .findFirst())
                .or(() -> claim.requirements().stream().findFirst())
                .or(() -> ask.subject().get(Scope.CONCEPT))
                .map(Address::of);
    }
}
