package groupwright.workbench.bikes;

import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Criterion;
import groupwright.documents.labels.Labels;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.Reader;
import groupwright.documents.numbers.TargetText;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.bikes.BikesSheet.Number;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.bikes.BikesSheet.Place;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** What checks of the fit are called and say. */
final class FitWords {
    /** What a cell of the matrix has room for. */
    private static final Map<String, String> SHORT = Map.of(
            "chain-angle", "short.angle",
            "pulley-gap", "short.gap",
            "links-to-spare", "short.links",
            "gears-not-closing", "short.closing",
            "chain-line-room", "short.line",
            "ring-room", "short.ring",
            "driver-room", "short.driver",
            "tyre-room", "short.tyre");

    /** Fields that are one thing to people. */
    private static final Map<String, String> FIELDS = Map.of(
            "hangerX_mm", "field.hanger",
            "hangerY_mm", "field.hanger",
            "hangerAngle_deg", "field.hanger",
            "chainLineLeast_mm", "field.lines",
            "chainLineMost_mm", "field.lines");

    /** Which numbers below a bar are lengths, whose unit the head says. */
    enum Lengths {
        LINE,
        BESIDE_AND_LINE
    }

    private final View view;
    private final Reader reader;
    private final AnswerText text;
    private final TargetText targets;
    private final Words words;

    FitWords(View view, Reader reader, Words words) {
        this.view = view;
        this.reader = reader;
        this.text = new AnswerText(reader);
        this.targets = new TargetText(reader, Labels.of(reader.locale()));
        this.words = words;
    }

    String name(Figure figure) {
        return text.name(figure);
    }

    String name(FitMatrix.Check check) {
        return check.asked()
                .map(this::name)
                .orElseGet(() ->
                        view.catalogue().find(check.name()).map(this::name).orElse(check.name()));
    }

    /** The figure with what its parameters say, for example {@code Chain angle, worst}. */
    private String name(FitMatrix.OnBikes asked) {
        Criterion criterion = asked.criterion();
        String figure =
                view.catalogue().find(criterion.figure()).map(this::name).orElse(criterion.figure());
        return criterion.parameters().values().entrySet().stream()
                .map(given -> given.getKey().equals("of")
                        ? given.getValue()
                        : text.parameter(given.getKey()) + " " + given.getValue())
                .collect(Collectors.collectingAndThen(Collectors.toList(), given -> {
                    List<String> parts = new ArrayList<>(List.of(figure));
                    parts.addAll(given);
                    return String.join(", ", parts);
                }));
    }

    /** As short as a column allows; a figure that has no short name keeps its own. */
    String shortName(String figure) {
        return Optional.ofNullable(SHORT.get(figure))
                .map(words::text)
                .orElseGet(() -> view.catalogue()
                        .find(figure)
                        .map(found -> name(found).toLowerCase(reader.locale()))
                        .orElse(figure));
    }

    String head(FitMatrix.OnBikes one, Lengths lengths) {
        return words.text(
                lengths == Lengths.LINE ? "head.line" : "head.lines",
                shortName(one.criterion().figure()),
                targets.of(one.criterion()));
    }

    String inFull(FitMatrix.OnBikes one) {
        return words.text(
                "head.name",
                name(one),
                targets.of(one.criterion()),
                one.requirement().id());
    }

    /** What is asked: of a room, that it is not below zero. */
    String limit(FitMatrix.Check check) {
        return check.asked()
                .map(one -> targets.of(one.criterion()))
                .orElseGet(() -> words.text(check.name().equals("gears-not-closing") ? "limit.none" : "limit.room"));
    }

    /** A value without its remark: the gear it was found in stands in Workings. */
    Optional<ShownValue> value(Ask ask, Answer answer) {
        return answer instanceof Quantity quantity
                ? Optional.of(text.of(ask, Quantity.of(quantity.value(), quantity.unit())))
                : Optional.empty();
    }

    ShownValue length(double mm) {
        return ShownValue.of(reader.in("mm").exact(mm));
    }

    /** The check that decided, in few words; empty where it holds for certain. */
    String cause(Verdict fits, String beside) {
        if (fits.meetsForCertain() || fits.criterion().isEmpty()) {
            return "";
        }
        String check = fits.criterion();
        int point = check.indexOf('.');
        return point < 0
                ? shortName(check)
                : figure(check)
                        .filter(figure ->
                                !figure.equals(beside) || !fits.missing().isEmpty())
                        .map(this::shortName)
                        .orElse("");
    }

    private Optional<String> figure(String check) {
        return new FitMatrix(view)
                .criteria().stream()
                        .filter(one -> one.name().equals(check))
                        .map(one -> one.criterion().figure())
                        .findFirst();
    }

    /** A field that is missing, as people call it. */
    String field(MissingInput input) {
        List<String> path = input.address().path();
        String name = path.get(path.size() - 1);
        return Optional.ofNullable(FIELDS.get(name)).map(words::text).orElseGet(() -> FieldLabel.of(name));
    }

    /** A cell in one sentence. */
    String cell(Pair pair, Verdict fits, String cause, Place place, Optional<Number> counted, List<Number> below) {
        List<String> parts = new ArrayList<>();
        parts.add(words.text("cell.name", pair.concept(), pair.bike(), fits.words())
                + (cause.isEmpty() ? "" : " (" + cause + ")"));
        counted.map(Number::name).ifPresent(parts::add);
        below.forEach(number -> parts.add(number.name()));
        if (place == Place.WORST) {
            parts.add(words.text("worst"));
        }
        return String.join(", ", parts);
    }

    Locale locale() {
        return reader.locale();
    }
}
