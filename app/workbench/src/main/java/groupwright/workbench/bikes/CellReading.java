package groupwright.workbench.bikes;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.documents.numbers.FieldLabel;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.Marks;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.bikes.BikesSheet.Cell;
import groupwright.workbench.bikes.BikesSheet.Check;
import groupwright.workbench.bikes.BikesSheet.Lack;
import groupwright.workbench.bikes.BikesSheet.Number;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.bikes.BikesSheet.Place;
import groupwright.workbench.look.Words;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads one concept on one bike: the criterion that counts most, the other numbers, and all checks. */
final class CellReading {
    private static final String GAP = "pulley-gap";
    private static final String ANGLE = "chain-angle";
    private static final String LINKS = "chain-links";
    private static final String SPARE = "links-to-spare";
    private static final String LINE_ROOM = "chain-line-room";

    private final View view;
    private final FitMatrix matrix;
    private final Words words;
    private final FitWords texts;
    private final Optional<FitMatrix.OnBikes> counted;
    private final String beside;

    CellReading(View view, FitMatrix matrix, Reader reader, Words words) {
        this.view = view;
        this.matrix = matrix;
        this.words = words;
        this.texts = new FitWords(view, reader, words);
        this.counted = matrix.criteria().stream()
                .max(Comparator.comparingInt(
                                (FitMatrix.OnBikes one) -> one.requirement().weight())
                        .thenComparing(FitMatrix.OnBikes::name, Comparator.reverseOrder())); // of equals the first
        this.beside =
                counted.filter(one -> one.criterion().figure().equals(GAP)).isPresent() ? ANGLE : GAP;
    }

    /** The criterion that counts most, as a head names it. */
    Optional<BikesSheet.Counted> counted() {
        return counted.map(one -> new BikesSheet.Counted(
                one.requirement().id(),
                texts.head(one, beside.equals(GAP) ? FitWords.Lengths.BESIDE_AND_LINE : FitWords.Lengths.LINE),
                texts.inFull(one)));
    }

    /** The bike that a concept is judged on by that criterion. */
    Optional<RecordId> worst(RecordId concept) {
        return counted.flatMap(one -> new Assessment(view)
                .verdict(one.requirement().id(), concept, one.criterion())
                .at()
                .get(Scope.BIKE));
    }

    /** Whether it is that bike, and not only the first of those on which the concept itself lacks an input. */
    private boolean judgedOn(RecordId concept, RecordId bike) {
        return worst(concept).equals(Optional.of(bike))
                && counted.filter(one -> {
                            Verdict verdict = new Assessment(view)
                                    .verdict(one.requirement().id(), concept, one.criterion());
                            return verdict.missing().isEmpty()
                                    || verdict.missing().stream()
                                            .anyMatch(input ->
                                                    input.address().record().equals(bike));
                        })
                        .isPresent();
    }

    Cell cell(Concept concept, Bike bike) {
        Pair pair = new Pair(concept.id(), bike.id());
        List<FitMatrix.Check> checks = matrix.checks(concept.id(), bike.id());
        Verdict fits = matrix.fits(concept.id(), bike.id());
        Place place = judgedOn(concept.id(), bike.id()) ? Place.WORST : Place.ANY;
        Optional<FitMatrix.Check> most = counted.flatMap(one -> named(checks, one.name()));
        Optional<Number> number = counted.map(one -> most.map(check -> number("", check))
                .orElseGet(() -> number("", pair, one.criterion().figure(), Check.HOLDS)));
        Number besideIt = checks.stream()
                .filter(check -> check.asked()
                        .filter(one -> one.criterion().figure().equals(beside))
                        .isPresent())
                .findFirst()
                .map(check -> number(texts.shortName(beside), check))
                .orElseGet(() -> number(texts.shortName(beside), pair, beside, Check.HOLDS));
        Number links = links(pair, checks);
        Number line = line(pair, concept, checks);
        String cause = tells(fits, number) ? "" : texts.cause(fits, beside);
        return new Cell(
                pair,
                fits,
                cause,
                place,
                number,
                most.map(FitMatrix.Check::verdict)
                        .filter(verdict -> verdict.marginPct().isPresent()
                                || !verdict.missing().isEmpty())
                        .map(Marks::bar),
                besideIt,
                links,
                line,
                texts.cell(pair, fits, cause, place, number, List.of(besideIt, links, line)));
    }

    /** Whether the number with the bar is what decided. */
    private boolean tells(Verdict fits, Optional<Number> number) {
        if (!fits.missing().isEmpty()
                && number.filter(shown -> shown.value().isEmpty()).isPresent()) {
            return true;
        }
        return number.isEmpty()
                ? fits.criterion().isEmpty()
                : counted.map(FitMatrix.OnBikes::name).equals(Optional.of(fits.criterion()));
    }

    private static Optional<FitMatrix.Check> named(List<FitMatrix.Check> checks, String name) {
        return checks.stream().filter(check -> check.name().equals(name)).findFirst();
    }

    private static Check holds(Verdict verdict) {
        return verdict.outcome() == Verdict.Outcome.MISSES ? Check.FAILS : Check.HOLDS;
    }

    private static Check holds(List<FitMatrix.Check> checks, String room) {
        return named(checks, room).map(check -> holds(check.verdict())).orElse(Check.HOLDS);
    }

    private Number number(String word, FitMatrix.Check check) {
        return number(word, check.measured(), check.verdict().value(), holds(check.verdict()), texts.name(check));
    }

    private Number number(String word, Pair pair, String figure, Check check) {
        Ask ask = ask(figure, pair);
        return number(word, Optional.of(ask), view.ask(ask), check, texts.name(ask.figure()));
    }

    private Number number(String word, Optional<Ask> ask, Answer answer, Check check, String name) {
        Optional<ShownValue> value = ask.flatMap(asked -> texts.value(asked, answer));
        Optional<MissingInput> lacks =
                answer instanceof Missing missing ? missing.inputs().stream().findFirst() : Optional.empty();
        String said = value.map(ShownValue::text).orElse(words.text("value.missing"));
        return new Number(word, value, ask, lacks, check, name + " " + said);
    }

    /** Where the chain supplied is too short, what to supply. */
    private Number links(Pair pair, List<FitMatrix.Check> checks) {
        Check check = holds(checks, SPARE);
        Number links = number("", pair, LINKS, check);
        return check == Check.FAILS
                ? new Number(
                        words.text("supply"),
                        links.value().map(value -> ShownValue.of(value.value())),
                        links.ask(),
                        links.lacks(),
                        check,
                        links.name() + ", " + words.text("supply.name"))
                : links;
    }

    /** The front chain line as it is drawn; asked is the room it leaves. */
    private Number line(Pair pair, Concept concept, List<FitMatrix.Check> checks) {
        Ask ask = ask(LINE_ROOM, pair);
        Optional<ShownValue> shown = concept.frontChainLine_mm().map(line -> texts.length(line.value()));
        Optional<MissingInput> lacks = shown.isPresent()
                ? Optional.empty()
                : view.ask(ask) instanceof Missing missing
                        ? missing.inputs().stream().findFirst()
                        : Optional.empty();
        String said = shown.map(ShownValue::text).orElse(words.text("value.missing"));
        return new Number(
                words.text("line"),
                shown,
                Optional.of(ask),
                lacks,
                holds(checks, LINE_ROOM),
                words.text("line.name", said));
    }

    /** What the bike itself lacks for any concept. */
    private List<MissingInput> missing(Bike bike) {
        return matrix.concepts().stream()
                .flatMap(concept -> matrix.checks(concept.id(), bike.id()).stream())
                .flatMap(check -> check.verdict().missing().stream())
                .filter(input -> input.address().record().equals(bike.id()))
                .distinct()
                .toList();
    }

    /** The same in few words. */
    Optional<Lack> lacks(Bike bike) {
        List<MissingInput> all = missing(bike);
        return all.stream().findFirst().map(first -> new Lack(words.text("bike.lacks", inWords(all)), first));
    }

    private String inWords(List<MissingInput> all) {
        return all.stream().map(texts::field).distinct().collect(Collectors.joining(words.text("list.separator")));
    }

    /** The same field by field. */
    List<Lack> fields(Bike bike) {
        return missing(bike).stream()
                .map(input -> new Lack(FieldLabel.of(input.address()), input))
                .toList();
    }

    Lack lack(MissingInput input) {
        return new Lack(words.text("lacks", input.address().record(), texts.field(input)), input);
    }

    /** All checks, those of requirements first. */
    List<BikesSheet.CheckLine> checks(Concept concept, Bike bike) {
        return matrix.checks(concept.id(), bike.id()).stream().map(this::line).toList();
    }

    private BikesSheet.CheckLine line(FitMatrix.Check check) {
        Number number = number("", check);
        String limit = texts.limit(check);
        List<Lack> lacks =
                check.verdict().missing().stream().map(this::lack).distinct().toList();
        return new BikesSheet.CheckLine(
                texts.name(check),
                number,
                limit,
                check.verdict(),
                check.asked().map(one -> one.requirement().id()),
                lacks,
                words.text(
                        "check.sentence", number.name(), limit, check.verdict().words()));
    }

    private Ask ask(String figure, Pair pair) {
        return FigureText.parse(figure + " " + pair.concept() + " " + pair.bike())
                .resolve(view.catalogue(), Optional.empty());
    }
}
