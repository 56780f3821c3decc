package groupwright.documents.project;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.InputText;
import groupwright.documents.trace.ShownValue;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceInput;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Makes trace entries of the ledger's workings; each question once. */
final class Traces {
    /** An answer that rests on more others than this lists them as inputs, not each with an entry of its own. */
    private static final int MOST_ENTRIES = 12;

    /** Longer lists of numbers are not printed; a concept has fewer gears. */
    private static final int MOST_LISTED = 60;

    private final View view;
    private final AnswerText text;
    private final InputText inputText;
    private final Labels labels;
    private final Map<Ask, TraceEntry> entries = new HashMap<>(); // looked up only, never iterated
    private final Map<String, Ask> asks = new HashMap<>(); // looked up only, never iterated
    private final Map<Asked, Set<String>> askedBy = new HashMap<>(); // looked up only, never iterated

    /** What a criterion asks, before it is known of whom. */
    private record Asked(String figure, Settings parameters) {}

    Traces(View view, AnswerText text, Labels labels) {
        this.view = view;
        this.text = text;
        this.inputText = new InputText(text, view.definition().project().currency());
        this.labels = labels;
        for (Requirement requirement : view.definition().all(RecordKinds.REQUIREMENT)) {
            for (Criterion criterion : requirement.criteria()) {
                askedBy.computeIfAbsent(
                                new Asked(criterion.figure(), criterion.parameters()), any -> new LinkedHashSet<>())
                        .add(requirement.id().text());
            }
        }
    }

    /** The entry of a question. */
    TraceEntry entry(Ask ask) {
        TraceEntry known = entries.get(ask);
        if (known == null) { // not computeIfAbsent: entries contain entries
            known = make(view.explain(ask));
            entries.put(ask, known);
            asks.put(known.id(), ask);
        }
        return known;
    }

    /** The question of an entry made here. */
    Ask ask(TraceEntry entry) {
        return asks.get(entry.id());
    }

    private TraceEntry make(Workings workings) {
        Ask ask = workings.ask();
        List<TraceInput> inputs = new ArrayList<>();
        fields(workings.inputs(), inputs);
        ask.parameters()
                .values()
                .forEach((name, value) -> inputs.add(new TraceInput(
                        labels.text("trace.parameter", text.parameter(name)), ShownValue.of(value), "")));
        List<TraceEntry> uses = new ArrayList<>();
        for (Workings.Use use : workings.uses()) {
            if (workings.uses().size() <= MOST_ENTRIES) {
                uses.add(entry(use.ask()));
            } else {
                inputs.add(new TraceInput(
                        text.name(use.ask().figure()) + ", " + use.ask().subject(),
                        shown(use.ask(), use.answer()),
                        use.ask().toString()));
            }
        }
        missing(workings.answer(), inputs);
        return new TraceEntry(
                text.name(ask.figure()),
                ask.toString(),
                subject(ask.subject()),
                shown(ask, workings.answer()),
                ask.figure().formula(),
                inputs,
                uses,
                band(workings),
                ask.figure().source(),
                text.leavesOut(ask.figure()),
                ask.figure().version(),
                requirements(ask));
    }

    /** A long list is counted, since whoever wants all of it can ask the ledger. */
    private ShownValue shown(Ask ask, Answer answer) {
        return answer instanceof Series series && series.values().size() > MOST_LISTED
                ? ShownValue.of(labels.text(
                        "value.many", Integer.toString(series.values().size())))
                : text.of(ask, answer);
    }

    /** How well a number is known; nothing is said of what is no number. */
    private String band(Workings workings) {
        if (!(workings.answer() instanceof Quantity quantity)) {
            return "";
        }
        String words = text.of(workings.ask().figure(), quantity.unit(), workings.band());
        return workings.band() instanceof Band.Between
                ? text.measured(quantity.unit()).with(words).text()
                : words;
    }

    /** The requirements whose criteria ask this, with these parameters written out or left at their usual values. */
    private List<String> requirements(Ask ask) {
        Optional<String> own = ask.subject().get(Scope.REQUIREMENT).map(RecordId::text);
        if (own.isPresent()) {
            return List.of(own.get());
        }
        Set<String> found =
                new LinkedHashSet<>(askedBy.getOrDefault(new Asked(ask.figure().id(), ask.parameters()), Set.of()));
        found.addAll(askedBy.getOrDefault(new Asked(ask.figure().id(), ask.givenParameters()), Set.of()));
        return List.copyOf(found);
    }

    /** What records gave; where that is much, fields that are empty (not retired, no parent) are only counted. */
    private void fields(List<Workings.FieldInput> given, List<TraceInput> inputs) {
        int empty = 0;
        for (Workings.FieldInput input : given) {
            if (given.size() > MOST_ENTRIES && input.text().isEmpty()) {
                empty++;
            } else {
                inputs.add(new TraceInput(
                        FieldLabel.of(input.address()),
                        inputText.of(input),
                        input.address().toString()));
            }
        }
        if (empty > 0) {
            inputs.add(new TraceInput(labels.text("trace.empty"), ShownValue.of(Integer.toString(empty)), ""));
        }
    }

    private void missing(Answer answer, List<TraceInput> inputs) {
        if (answer instanceof Missing missing) {
            missing.inputs()
                    .forEach(input -> inputs.add(new TraceInput(
                            labels.text("trace.missing"),
                            ShownValue.of(input.remedy().isEmpty() ? "—" : input.remedy()),
                            input.address().toString())));
        }
    }

    private static String subject(Subject subject) {
        return String.join(" · ", subject.ids().stream().map(Object::toString).toList());
    }
}
