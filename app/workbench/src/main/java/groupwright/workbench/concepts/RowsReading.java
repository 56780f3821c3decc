package groupwright.workbench.concepts;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Subject;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Settings;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Marks;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Reads the figures of concepts that agreed requirements ask for, and some nobody asks for yet. */
final class RowsReading {
    /** The order in which one looks at a concept: gears, riders, chain, weight, cost. */
    private static final List<String> ORDER = List.of(
            "gear-range",
            "gear-range-without-smallest",
            "lowest-development",
            "highest-development",
            "gears",
            "distinct-gears",
            "largest-step",
            "mean-step",
            "step-unevenness",
            "step-change",
            "sequence-step",
            "phase-mismatch",
            "longest-wait",
            "climb-cadence",
            "climb-speed",
            "steepest-climb",
            "spin-out-speed",
            "held-speed",
            "average-speed",
            "cadence-comfort",
            "shift-actions",
            "cogs-shifted",
            "front-shifts",
            "walking-time",
            "grinding-time",
            "chain-angle",
            "pulley-gap",
            "total-capacity",
            "capacity-margin",
            "side-travel",
            "impact-coupling",
            "mass-basic",
            "mass-predicted",
            "mass-p90",
            "unit-cost");

    /** Shown whether or not somebody asks for them. */
    private static final List<String> ALWAYS = List.of(
            "gear-range",
            "largest-step",
            "phase-mismatch",
            "total-capacity",
            "side-travel",
            "mass-predicted",
            "unit-cost");

    private static final String TESTED = "test-result";

    private final View view;
    private final Assessment assessment;
    private final Reader reader;
    private final AnswerText text;
    private final Words words;
    private final WhereText where;

    RowsReading(View view, Reader reader, Words words) {
        this.view = view;
        this.assessment = new Assessment(view);
        this.reader = reader;
        this.text = new AnswerText(reader);
        this.words = words;
        this.where = new WhereText(view, reader, words);
    }

    /** A row before it stands among the others. */
    private record Found(String figure, ConceptsSheet.Row row) {}

    List<ConceptsSheet.Row> of(List<Concept> concepts) {
        List<Found> found = new ArrayList<>();
        for (Requirement requirement : assessment.requirements()) {
            if (requirement.state() == Requirement.State.AGREED) {
                requirement
                        .criteria()
                        .forEach(criterion ->
                                found.add(new Found(criterion.figure(), asked(concepts, requirement, criterion))));
            }
        }
        Set<String> asked = found.stream().map(Found::figure).collect(Collectors.toSet());
        for (String id : ALWAYS) {
            if (!asked.contains(id)) {
                view.catalogue().find(id).ifPresent(figure -> found.add(new Found(id, plain(concepts, figure))));
            }
        }
        found.sort(Comparator.comparingInt((Found row) -> rank(row.figure()))
                .thenComparing(Found::figure)); // stable: requirements stay in the order of their ids
        return grouped(found);
    }

    private static int rank(String figure) {
        int known = ORDER.indexOf(figure);
        return figure.equals(TESTED) ? ORDER.size() + 1 : known < 0 ? ORDER.size() : known;
    }

    private static List<ConceptsSheet.Row> grouped(List<Found> found) {
        List<ConceptsSheet.Row> rows = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            boolean first =
                    i == 0 || !found.get(i).figure().equals(found.get(i - 1).figure());
            ConceptsSheet.Row row = found.get(i).row();
            rows.add(new ConceptsSheet.Row(
                    row.figure(),
                    row.where(),
                    first ? ConceptsSheet.Place.FIRST : ConceptsSheet.Place.FURTHER,
                    row.requirement(),
                    row.limit(),
                    row.cells()));
        }
        return rows;
    }

    /** How many targets each concept meets for certain. */
    List<Integer> meets(List<ConceptsSheet.Row> rows, int concepts) {
        return IntStream.range(0, concepts)
                .mapToObj(concept -> (int) rows.stream()
                        .flatMap(row -> row.cells().get(concept).verdict().stream())
                        .filter(Verdict::meetsForCertain)
                        .count())
                .toList();
    }

    private ConceptsSheet.Row asked(List<Concept> concepts, Requirement requirement, Criterion criterion) {
        Optional<Figure> figure = view.catalogue().find(criterion.figure());
        String name = figure.map(Figure::name).orElseGet(() -> inWords(criterion.figure()));
        ConceptsSheet.Limit limit = limit(criterion);
        String place = where.of(requirement, criterion, figure);
        List<ConceptsSheet.Cell> cells = concepts.stream()
                .map(concept -> judged(concept, requirement, criterion, name, place, limit))
                .toList();
        return new ConceptsSheet.Row(
                name, place, ConceptsSheet.Place.FIRST, Optional.of(requirement.id()), Optional.of(limit), cells);
    }

    private static String inWords(String id) {
        String spaced = id.replace('-', ' ');
        return Character.toUpperCase(spaced.charAt(0)) + spaced.substring(1);
    }

    private ConceptsSheet.Limit limit(Criterion criterion) {
        String target = reader.exact(criterion.target().value());
        String number = criterion
                .upper()
                .filter(upper -> criterion.comparator() == Criterion.Comparator.BETWEEN)
                .map(upper -> words.text("target.range", target, reader.exact(upper.value())))
                .orElse(target);
        return new ConceptsSheet.Limit(
                words.text("target." + criterion.comparator().name()), number, criterion.unit());
    }

    private ConceptsSheet.Cell judged(
            Concept concept,
            Requirement requirement,
            Criterion criterion,
            String name,
            String place,
            ConceptsSheet.Limit limit) {
        Verdict verdict = assessment.verdict(requirement.id(), concept.id(), criterion);
        Optional<ShownValue> value = verdict.value() instanceof Quantity quantity
                ? Optional.of(shown(criterion.figure(), bare(quantity)))
                : Optional.empty();
        Optional<MissingInput> lacks = verdict.missing().stream().findFirst();
        boolean whole = requirement.criteria().size() == 1;
        return new ConceptsSheet.Cell(
                ask(criterion, verdict.at()),
                whole ? Optional.of(verdictOn(requirement, concept)) : Optional.empty(),
                value,
                Optional.of(verdict),
                value.isPresent() && verdict.marginPct().isEmpty() ? Optional.empty() : Optional.of(Marks.bar(verdict)),
                stretch(criterion),
                lacks,
                said(concept, (name + " " + place).strip(), value, lacks)
                        + remark(verdict.value())
                        + ", " + verdict.words() + ", " + limit.text() + at(verdict, requirement, concept));
    }

    private Ask verdictOn(Requirement requirement, Concept concept) {
        return groupwright.definition.assessment.Asked.verdictOn(view, requirement.id(), concept.id());
    }

    /** The worst bike or rider group, where the row itself does not name it. */
    private String at(Verdict verdict, Requirement requirement, Concept concept) {
        return verdict.at().ids().stream()
                .filter(id -> !id.equals(concept.id()) && !id.equals(requirement.id()))
                .map(id -> ", " + id)
                .collect(Collectors.joining());
    }

    private ShownValue shown(String figure, Quantity quantity) {
        return view.catalogue()
                .find(figure)
                .map(known -> text.of(known, quantity))
                .orElseGet(() -> new ShownValue(
                        reader.exact(quantity.value()), quantity.unit().symbol()));
    }

    private Optional<Ask> ask(Criterion criterion, Subject at) {
        try {
            return view.catalogue().find(criterion.figure()).map(figure -> new Ask(figure, at, criterion.parameters()));
        } catch (Invalid unfit) {
            return Optional.empty(); // the verdict says what does not fit
        }
    }

    private static Optional<Double> stretch(Criterion criterion) {
        double target = criterion.target().value();
        if (target == 0 || criterion.comparator() == Criterion.Comparator.BETWEEN) {
            return Optional.empty();
        }
        int good = criterion.comparator() == Criterion.Comparator.AT_LEAST ? 1 : -1;
        return criterion.stretch().map(Amount::value).map(at -> good * (at - target) / Math.abs(target));
    }

    /** A remark is told with the name: in a column of numbers there is room for a word that changes what they mean only. */
    private static Quantity bare(Quantity quantity) {
        boolean pair = quantity.remark().chars().anyMatch(Character::isDigit);
        return pair ? Quantity.of(quantity.value(), quantity.unit()) : quantity;
    }

    private static String remark(Answer answer) {
        return answer instanceof Quantity quantity && !quantity.remark().isEmpty() ? ", " + quantity.remark() : "";
    }

    private ConceptsSheet.Row plain(List<Concept> concepts, Figure figure) {
        return new ConceptsSheet.Row(
                figure.name(),
                "",
                ConceptsSheet.Place.FIRST,
                Optional.empty(),
                Optional.empty(),
                concepts.stream().map(concept -> plain(concept, figure)).toList());
    }

    private ConceptsSheet.Cell plain(Concept concept, Figure figure) {
        Ask ask = new Ask(figure, Subject.NONE.with(concept.id()), Settings.NONE);
        Answer answer = view.ask(ask);
        Optional<MissingInput> lacks =
                answer instanceof Missing missing ? missing.inputs().stream().findFirst() : Optional.empty();
        Optional<ShownValue> value = lacks.isPresent()
                ? Optional.empty()
                : Optional.of(text.of(ask, answer instanceof Quantity quantity ? bare(quantity) : answer));
        return new ConceptsSheet.Cell(
                Optional.of(ask),
                Optional.empty(),
                value,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                lacks,
                said(concept, figure.name(), value, lacks) + remark(answer) + ", " + words.text("target.none"));
    }

    private String said(Concept concept, String name, Optional<ShownValue> value, Optional<MissingInput> lacks) {
        String tells = value.map(ShownValue::text)
                .orElseGet(() -> words.text("value.missing")
                        + lacks.map(input -> ", " + input.address() + ": " + input.remedy())
                                .orElse(""));
        return name + ", " + concept.id() + ", " + tells;
    }
}
