package groupwright.workbench.workings;

import groupwright.definition.assessment.Asked;
import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Band;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Series;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.BandPart;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.UnitSuffix;
import groupwright.definition.sensitivity.Effect;
import groupwright.definition.sensitivity.Movers;
import groupwright.definition.sensitivity.StatedChange;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.InputText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.WorkingsSheet.Changed;
import groupwright.workbench.workings.WorkingsSheet.Input;
import groupwright.workbench.workings.WorkingsSheet.Judged;
import groupwright.workbench.workings.WorkingsSheet.Knowledge;
import groupwright.workbench.workings.WorkingsSheet.MissingField;
import groupwright.workbench.workings.WorkingsSheet.Mover;
import groupwright.workbench.workings.WorkingsSheet.Nowhere;
import groupwright.workbench.workings.WorkingsSheet.Other;
import groupwright.workbench.workings.WorkingsSheet.Part;
import groupwright.workbench.workings.WorkingsSheet.Span;
import groupwright.workbench.workings.WorkingsSheet.Standing;
import groupwright.workbench.workings.WorkingsSheet.ToField;
import groupwright.workbench.workings.WorkingsSheet.ToFigure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Asks the ledger for what the panel shows. One figure is run once more; O(inputs + requirements + claims). */
public final class WorkingsReading {
    private static final int MOST_INPUTS = 24;
    private static final int MOST_PARTS = 5;
    private static final int MOST_MOVERS = 5;

    private final View view;
    private final Before before;
    private final Reader reader;
    private final Words words;
    private final AnswerText text;
    private final InputText inputs;
    private final TargetText targets;

    /** What the last step changed. */
    public interface Before {
        /** Nothing was changed. */
        Before NOTHING = new Before() {
            @Override
            public Optional<Object> field(Address address) {
                return Optional.empty();
            }

            @Override
            public Optional<Answer> answer(Ask ask) {
                return Optional.empty();
            }
        };

        /** What stood in a field, where it was changed. */
        Optional<Object> field(Address address);

        /** What an answer was, where it changed. */
        Optional<Answer> answer(Ask ask);
    }

    public WorkingsReading(View view, Before before, Locale locale) {
        this.view = view;
        this.before = before;
        this.reader = new Reader(locale);
        this.words = Words.of(WorkingsReading.class, locale);
        this.text = new AnswerText(reader);
        this.inputs = new InputText(text, view.definition().project().currency());
        this.targets = new TargetText(reader, Labels.of(locale));
    }

    /** The sheet of one figure. */
    public WorkingsSheet of(Ask ask) {
        Workings workings = view.explain(ask);
        List<Asked.By> by = new ArrayList<>(Asked.by(view, ask));
        by.sort(Comparator.comparing((Asked.By asked) -> asked.verdict().meetsForCertain())
                .thenComparing(asked -> !asked.verdict().missesForCertain()));
        return new WorkingsSheet(
                ask,
                ask.figure().name(),
                SubjectWords.besideConcept(view.definition(), ask),
                ask.subject().get(Scope.CONCEPT),
                value(ask, workings.answer()),
                standing(workings.answer()),
                before.answer(ask).map(was -> value(ask, was)),
                by.stream().map(this::judged).toList(),
                ask.figure().formula(),
                goesIn(workings),
                missing(workings.answer()),
                knowledge(workings, by),
                movers(ask),
                ask.figure().source(),
                ask.figure().leavesOut(),
                workings.answer() instanceof Series ? List.of() : others(ask),
                new Chain(view, words, before, targets).of(ask, by));
    }

    private ShownValue value(Ask ask, Answer answer) {
        return text.of(ask, answer);
    }

    private static Standing standing(Answer answer) {
        if (answer instanceof Quantity) {
            return Standing.NUMBER;
        } else if (answer instanceof Series) {
            return Standing.LIST;
        }
        return answer instanceof Missing ? Standing.MISSING : Standing.WORD;
    }

    private Judged judged(Asked.By by) {
        return new Judged(by.requirement().id(), by.criterion().id(), by.verdict(), targets.of(by.criterion()));
    }

    private List<Input> goesIn(Workings workings) {
        List<Input> found = new ArrayList<>();
        boolean much = workings.inputs().size() > MOST_INPUTS / 2;
        for (Workings.FieldInput input : workings.inputs()) {
            if (much && isStructure(input.value())) {
                continue; // where a part belongs says little beside what it weighs
            }
            boolean changed = before.field(input.address()).isPresent();
            if (!input.text().isEmpty() || changed) { // an empty field (not retired, no parent) says nothing
                found.add(new Input(
                        label(input.address()),
                        inputs.of(input),
                        new ToField(input.address()),
                        place(input.address()),
                        changed ? Changed.YES : Changed.NO));
            }
        }
        for (Workings.Use use : workings.uses()) {
            found.add(new Input(
                    use.ask().figure().name(),
                    value(use.ask(), use.answer()),
                    new ToFigure(use.ask()),
                    use.ask().subject().ids().stream()
                            .map(RecordId::text)
                            .reduce((a, b) -> a + " " + b)
                            .orElse(""),
                    before.answer(use.ask()).isPresent() ? Changed.YES : Changed.NO));
        }
        if (found.size() <= MOST_INPUTS) {
            return found;
        }
        List<Input> first = new ArrayList<>(found.subList(0, MOST_INPUTS));
        first.add(new Input(
                words.text("more", Integer.toString(found.size() - MOST_INPUTS)),
                ShownValue.of("…"),
                new Nowhere(),
                "",
                Changed.NO));
        return first;
    }

    private static boolean isStructure(Object value) {
        return value instanceof RecordId
                || value instanceof Optional<?> optional
                        && optional.filter(WorkingsReading::isStructure).isPresent()
                || value instanceof List<?> list && !list.isEmpty() && isStructure(list.get(0));
    }

    /** The field in words; for a climb or a criterion with its own id before it. */
    private static String label(Address address) {
        List<String> path = address.path();
        String last = FieldLabel.of(address);
        return path.size() >= 3 ? path.get(path.size() - 2) + ", " + last : last;
    }

    private static String place(Address address) {
        return address.record().text();
    }

    private static List<MissingField> missing(Answer answer) {
        return answer instanceof Missing missing
                ? missing.inputs().stream()
                        .map(input -> new MissingField(input.address(), input.remedy()))
                        .toList()
                : List.of();
    }

    private Knowledge knowledge(Workings workings, List<Asked.By> by) {
        Ask ask = workings.ask();
        Optional<Asked.By> close = by.stream()
                .filter(asked -> asked.verdict().certainty() == Verdict.Certainty.TOO_CLOSE_TO_CALL)
                .findFirst();
        if (!(workings.answer() instanceof Quantity quantity)) {
            return new Knowledge("", Optional.empty(), List.of(), "");
        }
        if (!(workings.band() instanceof Band.Between between)) {
            String key = workings.band() instanceof Band.Exact ? "band.exact" : "band.notStated";
            return new Knowledge(words.text(key), Optional.empty(), List.of(), "");
        }
        List<BandPart> parts = view.bandParts(ask);
        List<Part> shown =
                parts.stream().limit(MOST_PARTS).map(part -> part(ask, part)).toList();
        String advice = close.map(asked -> shown.isEmpty()
                        ? words.text("band.inside")
                        : words.text("band.settle", shown.get(0).label()))
                .orElse("");
        int decimals = ask.figure().decimals() + 1;
        Span span = new Span(
                between.low(),
                quantity.value(),
                between.high(),
                by.stream().findFirst().map(asked -> asked.criterion().target().value()),
                reader.number(between.low(), decimals),
                new ShownValue(
                                reader.number(between.high(), decimals),
                                quantity.unit().symbol())
                        .text());
        String words = text.of(ask.figure(), workings.band());
        return new Knowledge(words, Optional.of(span), shown, advice);
    }

    private Part part(Ask ask, BandPart part) {
        String unit = ask.figure().unit().symbol();
        return new Part(
                label(part.address()),
                "± " + reader.exact(part.amount().plusMinus()),
                "± "
                        + new ShownValue(
                                        reader.number(
                                                Math.abs(part.half()),
                                                ask.figure().decimals() + 1),
                                        unit)
                                .text(),
                part.address());
    }

    /** Each number behind the answer changed alone, those that move it most. */
    private List<Mover> movers(Ask ask) {
        return Movers.of(view, ask, StatedChange.USUAL)
                .first(MOST_MOVERS)
                .map(effect -> mover(ask, effect))
                .toList();
    }

    private Mover mover(Ask ask, Effect effect) {
        String unit = UnitSuffix.shown(effect.address().field());
        ShownValue from = inputs.of(Amount.of(effect.from()), unit);
        ShownValue to = inputs.of(Amount.of(effect.to()), unit);
        String moved = effect.difference().isPresent()
                ? new ShownValue(
                                reader.signed(
                                        effect.difference().getAsDouble(),
                                        ask.figure().decimals() + 1),
                                effect.before().unit().symbol())
                        .text()
                : words.text("movers.noAnswer");
        RecordId record = effect.address().record();
        String whose = ask.subject().ids().contains(record) || record.equals(RecordId.PROJECT) ? "" : record + " ";
        return new Mover(whose + label(effect.address()), from.value() + " → " + to.text(), moved, effect.address());
    }

    private List<Other> others(Ask ask) {
        Optional<RecordId> own = ask.subject().get(Scope.CONCEPT);
        if (own.isEmpty()) {
            return List.of();
        }
        List<Other> found = new ArrayList<>();
        for (Concept concept : new Assessment(view).concepts()) {
            List<RecordId> ids = new ArrayList<>(ask.subject().ids());
            ids.replaceAll(id -> id.equals(own.get()) ? concept.id() : id);
            Ask same = new Ask(ask.figure(), Subject.of(ids), ask.parameters());
            found.add(new Other(
                    concept.id(),
                    same,
                    value(same, view.ask(same)),
                    Asked.by(view, same).stream().map(Asked.By::verdict).findFirst()));
        }
        return found.size() > 1 ? found : List.of();
    }
}
