package groupwright.workbench.concepts;

import groupwright.definition.assessment.Assessment;
import groupwright.definition.figure.Answer;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.figure.Series;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.RiderGroup;
import groupwright.documents.charts.StepBars;
import groupwright.documents.numbers.Reader;
import groupwright.documents.project.ConceptCharts;
import groupwright.workbench.look.Words;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Asks the ledger for what the place shows. O(concepts · criteria) answers, most of them kept by the ledger. */
final class ConceptsReading {
    private static final int MOST_COUNTED_IN_WORDS = 12;
    private static final int ROLL_OUT_DECIMALS = 3;

    private final View view;
    private final Assessment assessment;
    private final Reader reader;
    private final Words words;
    private final ConceptCharts charts;

    ConceptsReading(View view, Locale locale) {
        this.view = view;
        this.assessment = new Assessment(view);
        this.reader = new Reader(locale);
        this.words = Words.of(ConceptsReading.class, locale);
        this.charts = new ConceptCharts(view, reader);
    }

    /**
     * The sheet.
     *
     * @param asked the rider group whose wheel was chosen; without one, or where it is gone, the most important
     */
    ConceptsSheet of(Optional<RecordId> asked, Shown shown) {
        List<Concept> all = view.definition().all(RecordKinds.CONCEPT);
        List<Concept> concepts = all.stream()
                .filter(shown::includes)
                .sorted(Comparator.comparing(Shown.Standing::of)) // stable: ids stay in order
                .toList();
        Optional<RecordId> wheel = asked.filter(this::isCurrent).or(charts::mostImportantRiders);
        ConceptCharts.Ladder ladder = wheel.map(riders -> charts.gearLadder(concepts, riders))
                .orElseGet(() -> new ConceptCharts.Ladder(Optional.empty(), List.of()));
        RowsReading rows = new RowsReading(view, reader, words);
        List<ConceptsSheet.Row> read = concepts.isEmpty() ? List.of() : rows.of(concepts);
        return new ConceptsSheet(
                summary(concepts, wheel),
                Arrays.stream(Shown.values())
                        .map(choice ->
                                (int) all.stream().filter(choice::includes).count())
                        .toList(),
                shown,
                entrants(concepts),
                assessment.riderGroups().stream()
                        .map(group -> new ConceptsSheet.Riders(group.id(), group.id() + " " + group.title()))
                        .toList(),
                wheel,
                ladder.chart(),
                lacks(ladder.missing()),
                read,
                rows.meets(read, concepts.size()),
                (int) read.stream().filter(row -> row.limit().isPresent()).count());
    }

    private boolean isCurrent(RecordId riders) {
        return view.definition()
                .get(riders, RiderGroup.class)
                .map(RiderGroup::isCurrent)
                .orElse(false);
    }

    private static List<MissingInput> lacks(List<Missing> missing) {
        return missing.stream()
                .flatMap(lacking -> lacking.inputs().stream())
                .distinct()
                .toList();
    }

    private List<ConceptsSheet.Entrant> entrants(List<Concept> concepts) {
        Map<RecordId, StepBars> steps = charts.stepBarsSideBySide(concepts, charts.requiredLimit());
        return concepts.stream()
                .map(concept -> new ConceptsSheet.Entrant(
                        concept.id(),
                        charts.sign(concept.id()),
                        concept.title(),
                        words.text(
                                "setUp", concept.rings().size(), concept.cogs().size()),
                        concept.rings(),
                        concept.cogs(),
                        Optional.ofNullable(steps.get(concept.id())),
                        Shown.Standing.of(concept),
                        concept.isCurrent() ? concept.stateReason() : concept.retired()))
                .toList();
    }

    private String summary(List<Concept> concepts, Optional<RecordId> wheel) {
        int count = concepts.size();
        if (count == 0) {
            return "";
        }
        String many = count <= MOST_COUNTED_IN_WORDS ? words.text("count." + count) : Integer.toString(count);
        String side = words.text(count == 1 ? "summary.one" : "summary.many", many);
        return wheel.flatMap(riders -> wheelWords(concepts, riders))
                .map(rolled -> words.text("summary.wheel", side, rolled))
                .orElse(side);
    }

    private Optional<String> wheelWords(List<Concept> concepts, RecordId riders) {
        return rollOut(concepts, riders).map(metres -> {
            String length = reader.number(metres, ROLL_OUT_DECIMALS);
            return marking(riders)
                    .map(marked -> words.text("wheel.marked", marked, length))
                    .orElseGet(() -> words.text("wheel.measured", riders, length));
        });
    }

    /** The marking on the tyre, where the roll-out follows from it. */
    private Optional<String> marking(RecordId riders) {
        return view.definition()
                .get(riders, RiderGroup.class)
                .filter(group -> group.rollOut_mm().isEmpty())
                .flatMap(group -> group.tyre_mm()
                        .flatMap(tyre -> group.beadSeat_mm()
                                .map(seat -> reader.exact(tyre.value()) + "-" + reader.exact(seat.value()))));
    }

    /** What the wheel rolls in one turn: metres per crank turn over the ratio of that gear, whichever it is. */
    private Optional<Double> rollOut(List<Concept> concepts, RecordId riders) {
        for (Concept concept : concepts) {
            Answer answer = view.ask(FigureText.parse("developments " + concept.id() + " " + riders)
                    .resolve(view.catalogue(), assessment.lead()));
            if (answer instanceof Series series && !series.values().isEmpty()) {
                Series.At first = series.values().get(0);
                String[] gear = first.at().split("/");
                return Optional.of(first.value() * Integer.parseInt(gear[1]) / Integer.parseInt(gear[0]));
            }
        }
        return Optional.empty();
    }
}
