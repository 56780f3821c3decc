package groupwright.documents.project;

import groupwright.definition.assessment.FitMatrix;
import groupwright.definition.assessment.FitMatrix.Check;
import groupwright.definition.figure.Verdict;
import groupwright.definition.figures.ChainLengthFigures;
import groupwright.definition.record.Bike;
import groupwright.definition.record.Concept;
import groupwright.definition.record.RecordId;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which concept fits which bike: over the bikes the document speaks of, and in one sentence for each. */
final class FitBlocks {
    private final Sheet sheet;
    private final FitMatrix fit;

    private FitBlocks(Sheet sheet) {
        this.sheet = sheet;
        this.fit = new FitMatrix(sheet.view());
    }

    /** Bikes as rows, concepts as columns; below them the worst bike of each concept and how many it fits. */
    static BlockAnswer matrix(Sheet sheet, String arguments) {
        BlockArguments.of("fit-matrix", arguments, List.of());
        return new FitBlocks(sheet).matrix();
    }

    private BlockAnswer matrix() {
        List<Concept> concepts = fit.concepts();
        List<Bike> bikes = sheet.bikes();
        if (concepts.isEmpty() || bikes.isEmpty()) {
            return new BlockAnswer.Paragraph(
                    Phrase.of(sheet.labels().text(bikes.isEmpty() ? "fit.noBike" : "nothing.toShow")));
        }
        List<Column> columns = new ArrayList<>(List.of(sheet.textColumn("bikes.title")));
        concepts.forEach(concept -> columns.add(Column.text(concept.id().text())));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Bike bike : bikes) {
            rows.add(row(bike.id() + " " + bike.title(), concepts, concept -> cell(concept, bike.id())));
        }
        if (bikes.size() > 1) {
            rows.add(row(sheet.labels().text("fit.worst"), concepts, concept -> worst(concept, bikes)));
            rows.add(row(sheet.labels().text("fit.fits"), concepts, concept -> Phrase.of(count(concept, bikes))));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<Phrase> row(String head, List<Concept> concepts, Function<RecordId, Phrase> cell) {
        return Stream.concat(
                        Stream.of(Phrase.of(head)),
                        concepts.stream().map(Concept::id).map(cell))
                .toList();
    }

    /** The verdict, what is in the way, and how long a chain the bike needs. */
    private Phrase cell(RecordId concept, RecordId bike) {
        List<Inline> parts = new ArrayList<>(List.of(new Inline.Judged(Marks.verdict(fit.fits(concept, bike)))));
        String missed = String.join(sheet.labels().text("list.separator"), missed(concept, bike));
        if (!missed.isEmpty()) {
            parts.add(new Inline.Plain(": " + missed));
        }
        String subject = " " + concept + " " + bike;
        var links = sheet.ask(ChainLengthFigures.CHAIN_LINKS + subject);
        if (sheet.number(links).isPresent()) {
            parts.add(new Inline.Plain(
                    isTooShort(concept, bike) ? "; " + sheet.labels().text("fit.supply") + " " : "; "));
            parts.add(sheet.live(links));
        }
        return new Phrase(parts);
    }

    /** The checks that miss, by the names of their figures; the chain's length apart, which is said in links. */
    private Set<String> missed(RecordId concept, RecordId bike) {
        Set<String> names = new LinkedHashSet<>();
        for (Check check : fit.checks(concept, bike)) {
            if (check.verdict().outcome() == Verdict.Outcome.MISSES
                    && !check.name().equals(ChainLengthFigures.LINKS_TO_SPARE)) {
                names.add(new FitCheckText(sheet).nameInSentence(check));
            }
        }
        return names;
    }

    private boolean isTooShort(RecordId concept, RecordId bike) {
        return sheet.number(sheet.ask(ChainLengthFigures.LINKS_TO_SPARE + " " + concept + " " + bike))
                .filter(spare -> spare < 0)
                .isPresent();
    }

    private Phrase worst(RecordId concept, List<Bike> bikes) {
        return Phrase.of(fit.worstBike(concept, bikes.stream().map(Bike::id).toList())
                .map(RecordId::text)
                .orElse("—"));
    }

    private String count(RecordId concept, List<Bike> bikes) {
        String all = Integer.toString(bikes.size());
        int meets = with(concept, bikes, Verdict.Outcome.MEETS).size();
        int unknown = with(concept, bikes, Verdict.Outcome.MISSING_INPUT).size();
        return unknown == 0
                ? sheet.labels().text("fit.count", Integer.toString(meets), all)
                : sheet.labels().text("fit.countOpen", Integer.toString(meets), all, Integer.toString(unknown));
    }

    private List<Bike> with(RecordId concept, List<Bike> bikes, Verdict.Outcome outcome) {
        return bikes.stream()
                .filter(bike -> fit.fits(concept, bike.id()).outcome() == outcome)
                .toList();
    }

    /**
     * In sentences: the bikes a concept fits, those it does not fit and why, and those of which too little is known.
     *
     * @param arguments a concept, or lead
     */
    static BlockAnswer inShort(Sheet sheet, String arguments) {
        Concept concept =
                BlockArguments.of("fit-in-short", arguments, List.of()).concept(sheet);
        return new BlockAnswer.Paragraph(Phrase.of(new FitBlocks(sheet).inShort(concept.id())));
    }

    private String inShort(RecordId concept) {
        List<Bike> bikes = sheet.bikes();
        if (bikes.isEmpty()) {
            return sheet.labels().text("fit.noBike");
        }
        List<Bike> meets = with(concept, bikes, Verdict.Outcome.MEETS);
        List<Bike> missing = with(concept, bikes, Verdict.Outcome.MISSING_INPUT);
        List<String> sentences = new ArrayList<>();
        if (!meets.isEmpty()) {
            sentences.add(sheet.labels().text("fit.short.meets", concept.text(), named(meets)));
        }
        for (Bike bike : with(concept, bikes, Verdict.Outcome.MISSES)) {
            Set<String> why = missed(concept, bike.id());
            if (isTooShort(concept, bike.id())) {
                why.add(sheet.labels().text("fit.chainTooShort"));
            }
            sentences.add(sheet.labels()
                    .text(
                            "fit.short.misses",
                            concept.text(),
                            named(List.of(bike)),
                            String.join(sheet.labels().text("list.separator"), why)));
        }
        if (!missing.isEmpty()) {
            sentences.add(sheet.labels().text("fit.short.missing", concept.text(), named(missing)));
        }
        return String.join(" ", sentences);
    }

    /** One bike with its title; of several the ids alone, since titles hold commas and the matrix has them all. */
    private String named(List<Bike> bikes) {
        return bikes.stream()
                .map(bike -> bikes.size() > 1 ? bike.id().text() : bike.id() + " " + bike.title())
                .collect(Collectors.joining(sheet.labels().text("list.separator")));
    }
}
