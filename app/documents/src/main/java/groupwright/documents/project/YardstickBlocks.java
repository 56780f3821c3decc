package groupwright.documents.project;

import groupwright.definition.figure.Ask;
import groupwright.definition.figure.Figure;
import groupwright.definition.figure.Quantity;
import groupwright.definition.figure.Scope;
import groupwright.definition.figure.Unit;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordKinds;
import groupwright.definition.record.Settings;
import groupwright.definition.record.Yardstick;
import groupwright.definition.record.YardstickValue;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import groupwright.documents.trace.ShownValue;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** A concept beside what it is measured against. */
final class YardstickBlocks {
    private YardstickBlocks() {}

    /** What is compared: a figure with its parameters. */
    private record Compared(String figure, Settings parameters) {
        static Compared of(YardstickValue value) {
            return new Compared(value.figure(), value.parameters());
        }

        String question() {
            return parameters.values().isEmpty() ? figure : figure + " " + parameters;
        }
    }

    /**
     * Figures as rows, the concept and the yardsticks as columns; each value of a yardstick with how it is known.
     *
     * @param arguments a concept, or lead
     */
    static BlockAnswer yardsticks(Sheet sheet, String arguments) {
        Concept concept = BlockArguments.of("yardsticks", arguments, List.of()).concept(sheet);
        List<Yardstick> yardsticks = sheet.definition().all(RecordKinds.YARDSTICK).stream()
                .filter(Yardstick::isCurrent)
                .toList();
        Set<Compared> compared = new LinkedHashSet<>();
        yardsticks.forEach(yardstick -> yardstick.values().stream()
                .filter(value -> sheet.knows(value.figure()))
                .map(Compared::of)
                .forEach(compared::add));
        List<Column> columns = new ArrayList<>(List.of(
                sheet.textColumn("block.figure"), Column.number(concept.id().text())));
        yardsticks.forEach(yardstick -> columns.add(Column.number(yardstick.title())));
        List<List<Phrase>> rows = new ArrayList<>();
        compared.forEach(each -> rows.add(row(sheet, concept, yardsticks, each)));
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<Phrase> row(Sheet sheet, Concept concept, List<Yardstick> yardsticks, Compared compared) {
        Figure figure = sheet.view().catalogue().find(compared.figure()).orElseThrow();
        List<Phrase> row = new ArrayList<>(List.of(
                Phrase.of(sheet.name(figure) + sheet.parameters(compared.parameters())),
                own(sheet, concept, compared)));
        for (Yardstick yardstick : yardsticks) {
            row.add(yardstick.values().stream()
                    .filter(value -> Compared.of(value).equals(compared))
                    .findFirst()
                    .map(value -> known(sheet, figure, value))
                    .orElse(Phrase.of("—")));
        }
        return row;
    }

    private static Phrase own(Sheet sheet, Concept concept, Compared compared) {
        try {
            Ask ask = sheet.ask(compared.question() + " " + concept.id() + asking(sheet, compared));
            return Phrase.of(sheet.live(ask));
        } catch (Invalid aboutMore) { // a figure of riders or bikes has no one value for a concept
            return Phrase.of("—");
        }
    }

    /** The requirement whose results count, for a figure that is asked of one: the first that asks the same. */
    private static String asking(Sheet sheet, Compared compared) {
        boolean ofRequirement = sheet.view()
                .catalogue()
                .find(compared.figure())
                .filter(figure -> figure.scopes().contains(Scope.REQUIREMENT))
                .isPresent();
        return sheet.assessment().requirements().stream()
                .filter(requirement -> ofRequirement
                        && requirement.criteria().stream()
                                .anyMatch(criterion ->
                                        compared.equals(new Compared(criterion.figure(), criterion.parameters()))))
                .findFirst()
                .map(requirement -> " " + requirement.id())
                .orElse("");
    }

    private static Phrase known(Sheet sheet, Figure figure, YardstickValue value) {
        ShownValue shown = sheet.text().of(figure, Quantity.of(value.value().value(), new Unit(value.unit())));
        String basis = sheet.labels().text("basis." + value.basis().name().toLowerCase(Locale.ROOT));
        return Phrase.of(shown.text() + ", " + basis);
    }
}
