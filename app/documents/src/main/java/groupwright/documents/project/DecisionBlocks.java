package groupwright.documents.project;

import groupwright.definition.assessment.WeighedOptions;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Decision;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Blocks about what was decided. */
final class DecisionBlocks {
    private DecisionBlocks() {}

    private static Stream<Decision> all(Sheet sheet) {
        return sheet.definition().all(RecordKinds.DECISION).stream().filter(Decision::isCurrent);
    }

    /** Every decision that stands, or the open question. */
    static BlockAnswer decisions(Sheet sheet, String arguments) {
        BlockArguments.of("decisions", arguments, List.of());
        List<Column> columns = List.of(
                sheet.textColumn("block.id"),
                sheet.textColumn("decisions.question"),
                sheet.textColumn("decisions.choice"),
                sheet.textColumn("decisions.reason"),
                sheet.textColumn("decisions.by"));
        List<List<Phrase>> rows = new ArrayList<>();
        all(sheet)
                .forEach(decision -> rows.add(List.of(
                        Phrase.of(decision.id().text()),
                        Phrase.of(decision.question()),
                        sheet.plain(chosen(decision)
                                .map(Decision.Option::name)
                                .orElse(sheet.labels().text("decisions.open"))),
                        sheet.plain(decision.reason()),
                        sheet.plain(signed(sheet, decision)))));
        return new BlockAnswer.Table(columns, rows);
    }

    /**
     * Why a concept was chosen: the reasons of decisions whose chosen option stands for it.
     *
     * @param arguments a concept, or lead
     */
    static BlockAnswer whyChosen(Sheet sheet, String arguments) {
        Concept concept = BlockArguments.of("why-chosen", arguments, List.of()).concept(sheet);
        List<Phrase> reasons = all(sheet)
                .filter(decision -> chosen(decision)
                        .flatMap(Decision.Option::concept)
                        .filter(concept.id()::equals)
                        .isPresent())
                .map(decision -> Phrase.of(
                        new Inline.Plain(decision.id() + ", " + signed(sheet, decision) + ": " + decision.reason())))
                .toList();
        return new BlockAnswer.Items(reasons);
    }

    private static Optional<Decision.Option> chosen(Decision decision) {
        return decision.options().stream()
                .filter(option -> option.id().equals(decision.choice()))
                .findFirst();
    }

    private static String signed(Sheet sheet, Decision decision) {
        return Stream.of(
                        Optional.of(decision.by()).filter(by -> !by.isEmpty()),
                        decision.date().map(sheet.reader()::day))
                .flatMap(Optional::stream)
                .reduce((by, day) -> by + ", " + day)
                .orElse("");
    }

    /**
     * How the options of a decision did by its criteria, with the weighed mean.
     *
     * @param arguments the decision
     */
    static BlockAnswer scores(Sheet sheet, String arguments) {
        Decision decision = decision(sheet, arguments);
        WeighedOptions weighed = new WeighedOptions(decision);
        List<Column> columns =
                new ArrayList<>(List.of(sheet.textColumn("scores.criterion"), sheet.numberColumn("scores.weight")));
        decision.options().forEach(option -> columns.add(Column.number(option.name())));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Decision.Weighing criterion : decision.criteria()) {
            List<Phrase> row = new ArrayList<>(List.of(
                    Phrase.of(criterion.name()),
                    Phrase.of(sheet.reader().exact(criterion.weight_pct().value()))));
            decision.options().forEach(option -> row.add(number(sheet, weighed.score(option.id(), criterion.id()))));
            rows.add(row);
        }
        List<Phrase> mean = new ArrayList<>(List.of(Phrase.of(sheet.labels().text("scores.mean")), Phrase.of("")));
        decision.options().forEach(option -> mean.add(number(sheet, weighed.mean(option.id()))));
        rows.add(mean);
        return new BlockAnswer.Table(columns, rows);
    }

    private static Phrase number(Sheet sheet, Optional<Double> value) {
        return sheet.plain(value.map(sheet.reader()::exact).orElse(""));
    }

    /** Not in the figure grammar, since no figure is asked about a decision. */
    private static Decision decision(Sheet sheet, String arguments) {
        RecordId id = RecordId.parse(arguments)
                .orElseThrow(() ->
                        new Invalid("", "\"" + arguments + "\" is no decision", "write for example scores D-001"));
        return sheet.definition()
                .get(id, Decision.class)
                .orElseThrow(() -> new Invalid("", "there is no decision " + id, "name one of the project"));
    }
}
