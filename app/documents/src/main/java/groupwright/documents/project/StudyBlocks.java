package groupwright.documents.project;

import groupwright.definition.cassettes.DecisionDraft;
import groupwright.definition.cassettes.Study;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Decision;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.documents.charts.TradeOff;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Phrase;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A concept's cassette among all that could stand in its place. Weights are estimates. */
final class StudyBlocks {
    private static final List<String> ASKED = List.of("smallest", "largest", "cogs", "largest-step", "most");
    private static final Pattern RANGE = Pattern.compile("([0-9]{1,3})(?:-([0-9]{1,3}))?");
    private static final int USUAL_ROWS = 12;
    private static final int DRAWN = 500;

    private StudyBlocks() {}

    /** A study with the words to tell it. */
    private record Told(Sheet sheet, Study study, StudyText text, int most) {
        static Told of(Sheet sheet, String block, String arguments) {
            BlockArguments read = BlockArguments.of(block, arguments, ASKED);
            Concept concept = read.concept(sheet);
            if (concept.cogs().size() < 2) {
                throw new Invalid("", concept.id() + " has a single cog", "name a concept with several cogs");
            }
            Study.Among among = new Study.Among(
                    span(read, "smallest"), span(read, "largest"), span(read, "cogs"), read.number("largest-step"));
            int most = read.number("most").map(Double::intValue).orElse(USUAL_ROWS);
            if (most < 10) {
                throw new Invalid("", "most is " + most, "show 10 or more");
            }
            try {
                Study study = Study.of(concept, among);
                return new Told(sheet, study, new StudyText(sheet, study), most);
            } catch (IllegalArgumentException contradiction) {
                throw new Invalid("", contradiction.getMessage(), "change what " + block + " asks for");
            }
        }

        private static Optional<Span> span(BlockArguments read, String name) {
            return read.read().parameters().get(name).map(text -> {
                Matcher range = RANGE.matcher(text);
                if (!range.matches()) {
                    throw new Invalid(
                            "", name + " is \"" + text + "\"", "write a number or a range, for example 42-48");
                }
                int least = Integer.parseInt(range.group(1));
                return new Span(least, range.group(2) == null ? least : Integer.parseInt(range.group(2)));
            });
        }
    }

    /** What was asked, and of how many the answer speaks. */
    static BlockAnswer question(Sheet sheet, String arguments) {
        return new BlockAnswer.Paragraph(
                Phrase.of(Told.of(sheet, "cassette-question", arguments).text().question()));
    }

    /** The best set, with the values of its cassettes. */
    static BlockAnswer best(Sheet sheet, String arguments) {
        Told told = Told.of(sheet, "best-cassettes", arguments);
        List<Column> columns =
                new ArrayList<>(List.of(sheet.textColumn("study.place"), sheet.textColumn("study.cogs")));
        List<Objective> objectives = told.study().best().question().ordered();
        objectives.forEach(objective -> columns.add(Column.number(told.text().head(objective))));
        List<List<Phrase>> rows = new ArrayList<>();
        List<Found> shown = told.study().shown(told.most()).shown();
        for (int i = 0; i < shown.size(); i++) {
            rows.add(row(told, told.text().place(i, shown.get(i)), shown.get(i), objectives));
        }
        if (shown.stream().noneMatch(found -> told.study().own().equals(found))) {
            rows.add(row(told, told.study().concept().id().text(), told.study().own(), objectives));
        }
        return new BlockAnswer.Table(columns, rows);
    }

    private static List<Phrase> row(Told told, String place, Found found, List<Objective> objectives) {
        List<Phrase> row = new ArrayList<>();
        row.add(Phrase.of(place));
        row.add(Phrase.of(onOneLine(DecisionDraft.teeth(found.cassette()))));
        objectives.forEach(objective ->
                row.add(Phrase.of(told.text().number(objective, found.values().in(objective)))));
        return row;
    }

    private static String onOneLine(String cogs) {
        return cogs.replace(' ', '\u202F');
    }

    /** Unevenness against weight. */
    static BlockAnswer tradeOff(Sheet sheet, String arguments) {
        Told told = Told.of(sheet, "cassette-trade-off", arguments);
        Found own = told.study().own();
        List<TradeOff.Point> points = new ArrayList<>();
        for (Found found : told.study().shown(DRAWN).shown()) {
            if (!found.equals(own)) {
                points.add(point(found, "", TradeOff.Mark.PASSES));
            }
        }
        points.add(point(own, told.study().concept().id().text(), TradeOff.Mark.TODAY));
        return new BlockAnswer.Drawing(
                new TradeOff(
                        told.text().axis(Objective.MASS),
                        told.text().axis(Objective.UNEVENNESS),
                        points,
                        Optional.empty(),
                        told.text().inBestSet(),
                        "",
                        sheet.reader()),
                List.of());
    }

    private static TradeOff.Point point(Found found, String name, TradeOff.Mark mark) {
        return new TradeOff.Point(
                found.values().in(Objective.MASS), found.values().in(Objective.UNEVENNESS), name, mark);
    }

    /** Where the concept's own cogs stand. */
    static BlockAnswer standing(Sheet sheet, String arguments) {
        Told told = Told.of(sheet, "cassette-standing", arguments);
        Standing standing = told.study().standing();
        return new BlockAnswer.Paragraph(Phrase.of(told.text().standing(standing)));
    }

    /** What each of the others does better and worse than the concept's own. */
    static BlockAnswer others(Sheet sheet, String arguments) {
        Told told = Told.of(sheet, "why-not-others", arguments);
        List<Found> shown = told.study().shown(told.most()).shown();
        List<Phrase> items = new ArrayList<>();
        for (int i = 0; i < shown.size(); i++) {
            if (!shown.get(i).equals(told.study().own())) {
                items.add(Phrase.of(told.text().against(told.text().place(i, shown.get(i)), shown.get(i))));
            }
        }
        return items.isEmpty() ? sheet.nothing() : new BlockAnswer.Items(items);
    }

    /** What one tooth more or less costs. */
    static BlockAnswer neighbours(Sheet sheet, String arguments) {
        Told told = Told.of(sheet, "cassette-neighbours", arguments);
        List<Objective> objectives =
                List.of(Objective.LARGEST_STEP, Objective.UNEVENNESS, Objective.MISMATCH, Objective.MASS);
        List<Column> columns = new ArrayList<>(List.of(sheet.textColumn("study.change")));
        objectives.forEach(objective -> columns.add(Column.number(told.text().head(objective))));
        columns.add(sheet.textColumn("study.keeps"));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Neighbour neighbour : told.study().neighbours()) {
            List<Phrase> row = new ArrayList<>();
            row.add(Phrase.of(neighbour.from() + " → " + neighbour.to()));
            objectives.forEach(objective -> row.add(
                    Phrase.of(told.text().change(objective, neighbour.change().get(objective)))));
            row.add(Phrase.of(told.text().keeps(neighbour)));
            rows.add(row);
        }
        return rows.isEmpty() ? sheet.nothing() : new BlockAnswer.Table(columns, rows);
    }

    /** A decision drafted from the study: its own cogs and the best in each objective. */
    static BlockAnswer decision(Sheet sheet, String arguments) {
        Told told = Told.of(sheet, "cassette-decision", arguments);
        Decision draft = DecisionDraft.of(RecordId.of("D", 999), told.study(), champions(told));
        List<Column> columns = new ArrayList<>(List.of(sheet.textColumn("study.cogs")));
        List<Objective> objectives = told.study().best().question().ordered();
        objectives.forEach(objective -> columns.add(Column.number(told.text().name(objective))));
        List<List<Phrase>> rows = new ArrayList<>();
        for (Decision.Option option : draft.options()) {
            List<Phrase> row = new ArrayList<>();
            row.add(Phrase.of(onOneLine(option.name())));
            draft.scores().stream()
                    .filter(score -> score.option().equals(option.id()))
                    .forEach(score -> row.add(
                            Phrase.of(sheet.reader().number(score.score().value(), 1))));
            rows.add(row);
        }
        return new BlockAnswer.Table(columns, rows);
    }

    /** The best of the set in each objective, each once. */
    private static List<Found> champions(Told told) {
        Set<Found> best = new LinkedHashSet<>();
        List<Found> all = told.study().shown(DRAWN).shown();
        for (Objective objective : told.study().best().question().ordered()) {
            Comparator<Found> byValue = Comparator.comparingDouble(
                    found -> Standing.lead(objective, told.study().own().values(), found.values()));
            all.stream().min(byValue).ifPresent(best::add);
        }
        return List.copyOf(best);
    }
}
