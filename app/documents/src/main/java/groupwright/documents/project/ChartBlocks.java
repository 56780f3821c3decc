package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.FigureText;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.documents.charts.Chart;
import groupwright.documents.charts.StepBars;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Phrase;
import java.util.List;
import java.util.Optional;

/** Charts of the concepts' gears. */
final class ChartBlocks {
    private ChartBlocks() {}

    /**
     * The gears of all concepts that are worked on, on the wheel of a rider group, and what that group needs.
     *
     * @param arguments a rider group; without one the most important
     */
    static BlockAnswer gearLadder(Sheet sheet, String arguments) {
        Optional<RecordId> riders = riders(sheet, arguments);
        return riders.isEmpty() ? nothing(sheet) : gearLadder(sheet, riders.get());
    }

    private static BlockAnswer gearLadder(Sheet sheet, RecordId riders) {
        ConceptCharts.Ladder ladder =
                sheet.charts().gearLadder(sheet.assessment().concepts(), riders);
        if (!ladder.missing().isEmpty()) {
            return new BlockAnswer.Paragraph(Phrase.of(sheet.labels().text("trace.missing") + ": "
                    + sheet.text().missing(ladder.missing().get(0))));
        }
        List<Ask> asks = sheet.assessment().concepts().stream()
                .map(concept -> sheet.ask("developments " + concept.id() + " " + riders))
                .toList();
        return drawing(sheet, ladder.chart(), asks);
    }

    private static BlockAnswer drawing(Sheet sheet, Optional<? extends Chart> chart, List<Ask> asks) {
        return chart.<BlockAnswer>map(drawn -> new BlockAnswer.Drawing(
                        drawn, asks.stream().map(sheet.traces()::entry).toList()))
                .orElseGet(() -> nothing(sheet));
    }

    /**
     * The steps of a concept.
     *
     * @param arguments a concept or lead; {@code at-most=18} draws a limit in percent, {@code from-teeth=14} the cog from
     *     which on it holds; without them the limit of the first agreed requirement on the largest step
     */
    static BlockAnswer stepBars(Sheet sheet, String arguments) {
        FigureText read = FigureText.parse("step-bars " + arguments);
        Concept concept = concept(sheet, read);
        ConceptCharts charts = sheet.charts();
        return drawing(
                sheet,
                charts.stepBars(concept, limit(read.parameters()).or(charts::requiredLimit)),
                List.of(sheet.ask("steps " + concept.id()), sheet.ask("like-positions " + concept.id())));
    }

    private static Optional<StepBars.Limit> limit(Settings parameters) {
        for (String name : parameters.values().keySet()) {
            if (!List.of("from-teeth", "at-most").contains(name)) {
                throw new Invalid("", "step-bars has no parameter " + name, "write from-teeth=14 or at-most=18");
            }
        }
        Optional<Double> most = number(parameters, "at-most");
        Optional<Double> from = number(parameters, "from-teeth");
        if (most.isEmpty() && from.isPresent()) {
            throw new Invalid("", "from-teeth is given without a limit", "add for example at-most=18");
        }
        if (most.filter(pct -> pct == 0).isPresent()) {
            throw new Invalid("", "at-most is 0", "write a limit above 0");
        }
        return most.map(pct -> new StepBars.Limit(from.orElse(0.0).intValue(), pct));
    }

    private static Optional<Double> number(Settings parameters, String name) {
        return parameters.get(name).map(text -> BlockArguments.fromZero(name, text));
    }

    private static Concept concept(Sheet sheet, FigureText read) {
        if (read.records().size() > 1) {
            throw new Invalid("", "step-bars shows one concept", "name one, and write a block for each");
        }
        RecordId id = read.records().isEmpty() ? sheet.lead() : read.records().get(0);
        return sheet.definition()
                .get(id, Concept.class)
                .orElseThrow(() -> new Invalid("", "there is no concept " + id, "name one of the project"));
    }

    private static Optional<RecordId> riders(Sheet sheet, String arguments) {
        if (arguments.isBlank()) {
            return sheet.charts().mostImportantRiders();
        }
        RecordId id = RecordId.parse(arguments)
                .orElseThrow(() -> new Invalid(
                        "", "\"" + arguments + "\" is no rider group", "write for example gear-ladder G-001"));
        sheet.definition()
                .get(id, RiderGroup.class)
                .orElseThrow(() -> new Invalid("", "there is no rider group " + id, "name one of the project"));
        return Optional.of(id);
    }

    private static BlockAnswer nothing(Sheet sheet) {
        return sheet.nothing();
    }
}
