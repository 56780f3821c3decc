package groupwright.documents.project;

import groupwright.definition.figure.Answer;
import groupwright.definition.figure.FigureText;
import groupwright.definition.figure.Missing;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Settings;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.GearLadder;
import groupwright.documents.charts.StepBars;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Phrase;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
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
        List<GearLadder.Lane> lanes = new ArrayList<>();
        for (Concept concept : sheet.assessment().concepts()) {
            Answer answer = sheet.view().ask(sheet.ask("developments " + concept.id() + " " + riders));
            if (answer instanceof Missing missing) {
                return new BlockAnswer.Paragraph(Phrase.of(sheet.labels().text("trace.missing") + ": "
                        + sheet.text().missing(missing)));
            }
            lanes.addAll(lanes(sheet, concept, (Series) answer));
        }
        if (lanes.isEmpty()) {
            return nothing(sheet);
        }
        List<GearLadder.Need> needs = new LadderNeeds(sheet, riders).all();
        return new BlockAnswer.Drawing(
                new GearLadder(riders.text(), lanes, needs, sheet.labels().locale()));
    }

    private static List<GearLadder.Lane> lanes(Sheet sheet, Concept concept, Series developments) {
        List<GearLadder.Lane> lanes = new ArrayList<>();
        for (int ring : concept.rings()) {
            List<Double> metres = developments.values().stream()
                    .filter(at -> at.at().startsWith(ring + "/"))
                    .map(Series.At::value)
                    .toList();
            if (!metres.isEmpty()) { // all its gears may be excluded
                lanes.add(new GearLadder.Lane(
                        sign(sheet, concept.id()), concept.id().text(), ring, metres));
            }
        }
        return lanes;
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
        Map<String, Double> sizes = GearBlocks.series(sheet, "steps " + concept.id());
        Map<String, Double> positions = GearBlocks.series(sheet, "like-positions " + concept.id());
        List<StepBars.Step> steps = new ArrayList<>();
        for (int i = 1; i < concept.cogs().size(); i++) {
            int smaller = concept.cogs().get(i - 1);
            int larger = concept.cogs().get(i);
            String pair = smaller + "-" + larger;
            steps.add(new StepBars.Step(
                    smaller, larger, sizes.get(pair), positions.get(pair).intValue()));
        }
        if (steps.isEmpty()) {
            return nothing(sheet);
        }
        return new BlockAnswer.Drawing(StepBars.of(
                sign(sheet, concept.id()),
                concept.id().text(),
                steps,
                limit(read.parameters()).or(() -> required(sheet)),
                sheet.labels().locale()));
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

    private static Optional<StepBars.Limit> required(Sheet sheet) {
        return sheet.assessment().requirements().stream()
                .filter(requirement -> requirement.state() == Requirement.State.AGREED)
                .flatMap(requirement -> requirement.criteria().stream())
                .filter(criterion -> criterion.figure().equals("largest-step")
                        && criterion.comparator() == Criterion.Comparator.AT_MOST
                        && criterion.target().value() > 0)
                .findFirst()
                .map(criterion -> new StepBars.Limit(
                        number(criterion.parameters(), "from-teeth").orElse(0.0).intValue(),
                        criterion.target().value()));
    }

    private static Optional<Double> number(Settings parameters, String name) {
        return parameters.get(name).map(text -> {
            if (!Settings.isNumber(text) || Double.parseDouble(text) < 0) {
                throw new Invalid("", name + " is \"" + text + "\"", "write a number from 0");
            }
            return Double.parseDouble(text);
        });
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
            return sheet.assessment().riderGroups().stream()
                    .max(Comparator.comparingInt(RiderGroup::importance)
                            .thenComparing(RiderGroup::id, Comparator.reverseOrder()))
                    .map(RiderGroup::id);
        }
        RecordId id = RecordId.parse(arguments)
                .orElseThrow(() -> new Invalid(
                        "", "\"" + arguments + "\" is no rider group", "write for example gear-ladder G-001"));
        sheet.definition()
                .get(id, RiderGroup.class)
                .orElseThrow(() -> new Invalid("", "there is no rider group " + id, "name one of the project"));
        return Optional.of(id);
    }

    /** A concept keeps its sign for ever, so it comes from its number and not from what else is there. */
    private static ConceptSign sign(Sheet sheet, RecordId concept) {
        boolean lead = sheet.assessment().lead().equals(Optional.of(concept));
        return new ConceptSign(
                Math.max(1, concept.number()), lead ? ConceptSign.Standing.LEAD : ConceptSign.Standing.OTHER);
    }

    private static BlockAnswer nothing(Sheet sheet) {
        return new BlockAnswer.Paragraph(Phrase.of(sheet.labels().text("nothing.toShow")));
    }
}
