package groupwright.workbench.bikes;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figure.Verdict.Outcome;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.ConceptCharts;
import groupwright.documents.project.FitCharts;
import groupwright.workbench.bikes.BikesSheet.Cell;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.look.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Asks the ledger for what the place shows. O(bikes · concepts · checks) answers, kept by the ledger. */
final class BikesReading {
    private final View view;
    private final FitMatrix matrix;
    private final Reader reader;
    private final Words words;
    private final CellReading cells;
    private final List<Bike> bikes;
    private final List<Concept> concepts;

    BikesReading(View view, Locale locale) {
        this.view = view;
        this.matrix = new FitMatrix(view);
        this.reader = new Reader(locale);
        this.words = Words.of(BikesReading.class, locale);
        this.cells = new CellReading(view, matrix, reader, words);
        this.bikes = matrix.bikes();
        this.concepts = matrix.concepts();
    }

    /** How many bikes the lead concept certainly misses, or cannot be judged on. */
    static int open(View view) {
        FitMatrix matrix = new FitMatrix(view);
        return new Assessment(view)
                .lead()
                .map(lead -> (int) matrix.bikes().stream()
                        .map(bike -> matrix.fits(lead, bike.id()))
                        .filter(fits -> fits.missesForCertain() || fits.outcome() == Outcome.MISSING_INPUT)
                        .count())
                .orElse(0);
    }

    /**
     * The sheet.
     *
     * @param chosen the bike that is drawn; without one, or where it is gone, the worst of the lead concept
     * @param opened the cell whose checks are shown
     */
    BikesSheet of(Optional<RecordId> chosen, Optional<Pair> opened) {
        ConceptCharts charts = new ConceptCharts(view, reader);
        List<BikesSheet.Row> rows = bikes.stream().map(this::row).toList();
        List<BikesSheet.Column> columns = new ArrayList<>();
        for (int i = 0; i < concepts.size(); i++) {
            int column = i;
            Concept concept = concepts.get(i);
            List<Verdict> verdicts =
                    rows.stream().map(row -> row.cells().get(column).fits()).toList();
            columns.add(new BikesSheet.Column(
                    concept.id(), charts.sign(concept.id()), concept.title(), verdicts, fits(concept, verdicts)));
        }
        return new BikesSheet(
                columns,
                rows,
                cells.counted(),
                view.definition().all(RecordKinds.BIKE).stream()
                        .filter(bike -> !bike.isCurrent())
                        .map(bike -> new BikesSheet.Retired(bike.id(), bike.title(), bike.retired()))
                        .toList(),
                picture(chosen),
                opened.flatMap(this::opened));
    }

    private String fits(Concept concept, List<Verdict> verdicts) {
        return words.text("fits.name", concept.id())
                + verdicts.stream()
                        .collect(Collectors.groupingBy(Verdict::words, java.util.TreeMap::new, Collectors.counting()))
                        .entrySet()
                        .stream()
                        .map(count -> count.getValue() + " " + count.getKey())
                        .collect(Collectors.joining(", "));
    }

    private BikesSheet.Row row(Bike bike) {
        List<Cell> read =
                concepts.stream().map(concept -> cells.cell(concept, bike)).toList();
        List<String> measures = List.of(
                length(bike.chainstay_mm()),
                length(bike.cassetteCentre_mm()),
                lines(bike),
                bike.largestRing_teeth()
                        .map(teeth -> words.text("teeth", reader.exact(teeth.value())))
                        .orElse(words.text("nothing")));
        Optional<BikesSheet.Lack> lacks = cells.lacks(bike);
        String name = words.text(
                "row.name",
                bike.id(),
                bike.title(),
                measures.get(0),
                measures.get(1),
                measures.get(2),
                measures.get(3),
                lacks.map(BikesSheet.Lack::words).orElse(bike.source()));
        return new BikesSheet.Row(
                bike.id(), bike.title(), measures, bike.source(), lacks, cells.fields(bike), read, name);
    }

    private String length(Optional<Amount> amount) {
        return amount.map(length -> reader.in("mm")
                        .with(reader.in("mm").exact(length.value()))
                        .text())
                .orElse(words.text("nothing"));
    }

    private String lines(Bike bike) {
        if (bike.chainLineLeast_mm().isEmpty() && bike.chainLineMost_mm().isEmpty()) {
            return words.text("nothing");
        }
        String nothing = words.text("nothing.inside");
        return reader.in("mm")
                .with(words.text(
                        "lines",
                        bike.chainLineLeast_mm()
                                .map(least -> reader.exact(least.value()))
                                .orElse(nothing),
                        bike.chainLineMost_mm()
                                .map(most -> reader.exact(most.value()))
                                .orElse(nothing)))
                .text();
    }

    private Optional<BikesSheet.Picture> picture(Optional<RecordId> chosen) {
        Optional<Bike> drawn =
                chosen.flatMap(this::current).or(() -> leadsWorst().flatMap(this::current));
        return concepts.isEmpty()
                ? Optional.empty()
                : drawn.map(bike -> {
                    FitCharts.Above above = new FitCharts(view, reader).fromAbove(bike, concepts);
                    return new BikesSheet.Picture(
                            bike.id(),
                            above.chart(),
                            above.missing().stream().map(cells::lack).toList());
                });
    }

    private Optional<Bike> current(RecordId id) {
        return bikes.stream().filter(bike -> bike.id().equals(id)).findFirst();
    }

    /** What the lead concept is judged on; without one, the first concept. */
    private Optional<RecordId> leadsWorst() {
        return new Assessment(view)
                .lead()
                .or(() -> concepts.stream().map(Concept::id).findFirst())
                .flatMap(concept -> cells.worst(concept).or(() -> matrix.worstBike(concept)));
    }

    private Optional<BikesSheet.Opened> opened(Pair pair) {
        Optional<Bike> bike = current(pair.bike());
        Optional<Concept> concept =
                concepts.stream().filter(one -> one.id().equals(pair.concept())).findFirst();
        return bike.flatMap(on -> concept.map(of -> new BikesSheet.Opened(
                pair,
                words.text("checks.title", of.id(), on.id(), on.title()),
                matrix.fits(of.id(), on.id()),
                cells.checks(of, on))));
    }
}
