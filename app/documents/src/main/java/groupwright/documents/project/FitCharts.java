package groupwright.documents.project;

import groupwright.definition.assessment.Asked;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Series;
import groupwright.definition.figures.ChainLines;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.FromAbove;
import groupwright.documents.numbers.AnswerText;
import groupwright.documents.numbers.Reader;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Drawings of concepts on a bike, made of what the ledger answers, for pages and for the screen. Ledger thread. */
public final class FitCharts {
    private final View view;
    private final Reader reader;
    private final AnswerText text;
    private final ConceptCharts concepts;

    public FitCharts(View view, Reader reader) {
        this.view = view;
        this.reader = reader;
        this.text = new AnswerText(reader);
        this.concepts = new ConceptCharts(view, reader);
    }

    /**
     * A drawing from above, or what stands in its way.
     *
     * @param chart nothing where no concept can be drawn
     * @param missing what those concepts lack that are left out, in the order of concepts
     */
    public record Above(Optional<FromAbove> chart, List<MissingInput> missing) {
        public Above {
            missing = List.copyOf(missing);
        }
    }

    /** A concept as it can be drawn, or what it lacks. */
    private record Drawn(Concept concept, Optional<FromAbove.Entrant> entrant, List<MissingInput> missing) {}

    /** Concepts over each other on one bike in the lowest gear, the lead concept on top. Costs two answers a concept. */
    public Above fromAbove(Bike bike, List<Concept> all) {
        List<Drawn> drawn = all.stream().map(concept -> drawn(bike, concept)).toList();
        List<FromAbove.Entrant> entrants = new ArrayList<>();
        drawn.forEach(one -> one.entrant().ifPresent(entrants::add));
        entrants.sort(Comparator.comparing(entrant -> entrant.sign().standing() == ConceptSign.Standing.LEAD));
        List<MissingInput> missing =
                drawn.stream().flatMap(one -> one.missing().stream()).distinct().toList();
        if (entrants.isEmpty()) {
            return new Above(Optional.empty(), missing);
        }
        List<String> lacking = drawn.stream()
                .filter(one -> one.entrant().isEmpty())
                .map(one -> one.concept().id().text())
                .toList();
        // whoever stands on its lines has these two fields
        double stay = bike.chainstay_mm().map(Amount::value).orElseThrow();
        double centre = bike.cassetteCentre_mm().map(Amount::value).orElseThrow();
        return new Above(
                Optional.of(new FromAbove(bike.id().text(), stay, centre, entrants, lacking, reader)), missing);
    }

    private Drawn drawn(Bike bike, Concept concept) {
        Answer lines = view.ask(ask(ChainLines.FIGURE, concept, bike));
        Ask lowest = ask("chain-angle", concept, bike);
        Answer angle = view.ask(lowest);
        if (lines instanceof Series series && angle instanceof Quantity quantity) {
            return new Drawn(
                    concept, Optional.of(entrant(concept, ChainLines.of(series), lowest, quantity)), List.of());
        }
        List<MissingInput> inputs = lines instanceof Missing missing ? missing.inputs() : List.of();
        return new Drawn(concept, Optional.empty(), inputs);
    }

    private FromAbove.Entrant entrant(Concept concept, ChainLines lines, Ask lowest, Quantity angle) {
        String[] gear = angle.remark().split("/");
        return new FromAbove.Entrant(
                concepts.sign(concept.id()),
                concept.id().text(),
                wheels(lines.rings()),
                wheels(lines.cogs()),
                wheel(lines.rings(), gear[0]),
                wheel(lines.cogs(), gear[1]),
                text.of(lowest, Quantity.of(angle.value(), angle.unit())).text(),
                Asked.by(view, lowest).stream()
                        .findFirst()
                        .map(by -> text.of(lowest, by.verdict()).value())
                        .orElse(""));
    }

    private static List<FromAbove.Wheel> wheels(List<ChainLines.Wheel> wheels) {
        return wheels.stream().map(FitCharts::wheel).toList();
    }

    private static FromAbove.Wheel wheel(List<ChainLines.Wheel> wheels, String teeth) {
        return wheels.stream()
                .filter(wheel -> Integer.toString(wheel.teeth()).equals(teeth))
                .map(FitCharts::wheel)
                .findFirst()
                .orElseThrow();
    }

    private static FromAbove.Wheel wheel(ChainLines.Wheel wheel) {
        return new FromAbove.Wheel(wheel.teeth(), wheel.lineMm());
    }

    private Ask ask(String figure, Concept concept, Bike bike) {
        return FigureText.parse(figure + " " + concept.id() + " " + bike.id())
                .resolve(view.catalogue(), Optional.empty());
    }
}
