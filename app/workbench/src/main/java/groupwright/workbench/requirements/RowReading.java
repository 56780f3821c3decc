package groupwright.workbench.requirements;

import groupwright.definition.assessment.Asked;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.documents.project.Marks;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.workings.SubjectWords;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads one criterion for the lead concept. */
final class RowReading {
    private final Reading reading;
    private final Optional<RecordId> lead;

    RowReading(Reading reading, Optional<RecordId> lead) {
        this.reading = reading;
        this.lead = lead;
    }

    Row.Measured of(Requirement requirement, Criterion criterion) {
        Optional<Verdict> verdict =
                lead.map(concept -> reading.assessment().verdict(requirement.id(), concept, criterion));
        Optional<Quantity> value =
                verdict.map(Verdict::value).filter(Quantity.class::isInstance).map(Quantity.class::cast);
        return new Row.Measured(
                requirement.id(),
                criterion.id(),
                name(criterion),
                where(criterion, others(verdict), RecordId::text),
                where(criterion, others(verdict), id -> SubjectWords.named(reading.definition(), id)),
                limit(criterion),
                value.map(quantity -> reading.shown(criterion.figure(), quantity)),
                verdict.flatMap(judged -> judged.missing().stream().findFirst())
                        .map(input -> new Row.Missing(input.address(), input.remedy())),
                verdict.filter(judged -> value.isEmpty() || judged.marginPct().isPresent())
                        .map(Marks::bar),
                stretch(criterion),
                verdict.map(judged -> margin(criterion, judged)).orElse(""),
                verdict,
                verdict.map(judged -> ask(criterion, judged)
                        .orElseGet(() -> Asked.verdictOn(reading.view(), requirement.id(), lead.orElseThrow()))));
    }

    /** What is measured: of a test result its quantity, else the figure's name; its id in words where there is none. */
    String name(Criterion criterion) {
        Optional<String> quantity = criterion.parameters().get("quantity");
        if (quantity.isPresent()) {
            return FieldWords.sentenceCase(quantity.get().replace('-', ' '));
        }
        return figureName(criterion);
    }

    private String figureName(Criterion criterion) {
        return reading.view()
                .catalogue()
                .find(criterion.figure())
                .map(Figure::name)
                .orElse(FieldWords.sentenceCase(criterion.figure().replace('-', ' ')));
    }

    private static String decapitalised(String text) {
        return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
    }

    private static Row.Limit limitOf(String comparator, String number, Criterion criterion) {
        return new Row.Limit(comparator, number, criterion.unit());
    }

    private Row.Limit limit(Criterion criterion) {
        String target = reading.reader().exact(criterion.target().value());
        return switch (criterion.comparator()) {
            case AT_LEAST -> limitOf(reading.text("target.atLeast"), target, criterion);
            case AT_MOST -> limitOf(reading.text("target.atMost"), target, criterion);
            case BETWEEN ->
                limitOf(
                        reading.text("target.between"),
                        reading.text(
                                "target.range",
                                target,
                                reading.reader()
                                        .exact(criterion.upper().orElseThrow().value())),
                        criterion);
        };
    }

    /** The rider group and bike a verdict speaks of. */
    private List<RecordId> others(Optional<Verdict> verdict) {
        return verdict.map(judged -> judged.at().ids().stream()
                        .filter(id -> !lead.equals(Optional.of(id)) && !id.hasLetters("R"))
                        .toList())
                .orElse(List.of());
    }

    private interface Naming {
        String of(RecordId id);
    }

    private String where(Criterion criterion, List<RecordId> others, Naming naming) {
        String records = others.stream().map(naming::of).collect(Collectors.joining(" "));
        String parameters = criterion.parameters().values().entrySet().stream()
                .map(given -> parameter(criterion, given))
                .collect(Collectors.joining(" "));
        return (records + " " + parameters).strip();
    }

    private String parameter(Criterion criterion, Map.Entry<String, String> given) {
        String value = given.getValue().replace('-', ' ');
        return switch (given.getKey()) {
            case "from-teeth" -> reading.text("where.fromTeeth", value);
            case "climb" -> value;
            case "quantity" -> decapitalised(figureName(criterion));
            default -> given.getKey().replace('-', ' ') + " " + value;
        };
    }

    private static Optional<Double> stretch(Criterion criterion) {
        double target = criterion.target().value();
        if (target == 0 || criterion.comparator() == Criterion.Comparator.BETWEEN) {
            return Optional.empty();
        }
        int good = criterion.comparator() == Criterion.Comparator.AT_LEAST ? 1 : -1;
        return criterion.stretch().map(Amount::value).map(at -> good * (at - target) / Math.abs(target));
    }

    private String margin(Criterion criterion, Verdict verdict) {
        if (verdict.outcome() == Verdict.Outcome.MISSING_INPUT) {
            return "";
        }
        return verdict.marginPct()
                .map(share -> reading.reader().signed(share, 1))
                .orElseGet(() -> reading.reader().signed(verdict.margin(), decimals(criterion))
                        + (criterion.unit().isEmpty() ? "" : "\u202F" + criterion.unit()));
    }

    private int decimals(Criterion criterion) {
        return reading.view()
                .catalogue()
                .find(criterion.figure())
                .map(Figure::decimals)
                .orElse(1);
    }

    /** The question behind a verdict; nothing where the criterion names none that can be asked. */
    Optional<Ask> ask(Criterion criterion, Verdict verdict) {
        try {
            return reading.view()
                    .catalogue()
                    .find(criterion.figure())
                    .map(figure -> new Ask(figure, verdict.at(), criterion.parameters()));
        } catch (Invalid unfit) {
            return Optional.empty(); // the verdict says what does not fit
        }
    }
}
