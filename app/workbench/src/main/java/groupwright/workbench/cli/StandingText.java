package groupwright.workbench.cli;

import groupwright.documents.numbers.Reader;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Limit;
import groupwright.drivetrain.search.Measures;
import groupwright.drivetrain.search.Neighbour;
import groupwright.drivetrain.search.Objective;
import groupwright.drivetrain.search.Question;
import groupwright.drivetrain.search.Span;
import groupwright.drivetrain.search.Standing;
import groupwright.workbench.cli.TextTable.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** A typed-in cassette and what surrounds it, for people. */
final class StandingText {
    private final Question question;
    private final List<Objective> measures;
    private final Reader reader;

    /** @param measures what is told of each cassette */
    StandingText(Question question, List<Objective> measures, Reader reader) {
        this.question = question;
        this.measures = measures;
        this.reader = reader;
    }

    /** Where it stands among so many best ones. */
    String of(Standing standing, long best) {
        if (standing instanceof Standing.Best one) {
            String which = best == 1
                    ? " is the one that no other beats"
                    : " is one of " + count(best) + " that no other beats";
            return CassettesReport.cogs(one.cassette().cassette()) + which + ": "
                    + values(one.cassette().values()) + ".\n";
        } else if (standing instanceof Standing.Beaten beaten) {
            return beaten(beaten);
        } else if (standing instanceof Standing.Breaks breaks) {
            return CassettesReport.cogs(breaks.cassette()) + " breaks a limit: it must "
                    + breaks.limit().demand() + ".\n";
        }
        return "%s lies outside of what was asked for: %s to %s teeth with %s cogs.\n"
                .formatted(
                        CassettesReport.cogs(((Standing.Outside) standing).cassette()),
                        span(question.smallest()),
                        span(question.largest()),
                        span(question.count()));
    }

    private static String span(Span span) {
        return CassettesReport.isRange(span) ? span.least() + "-" + span.most() : String.valueOf(span.least());
    }

    private String count(long number) {
        return reader.number(number, 0);
    }

    private String values(Measures values) {
        return measures.stream()
                .map(objective ->
                        CassettesReport.name(objective) + " " + value(objective, values) + " " + objective.unit())
                .collect(Collectors.joining(", "));
    }

    private String value(Objective objective, Measures values) {
        return reader.number(values.in(objective), CassettesReport.decimals(objective));
    }

    private String beaten(Standing.Beaten beaten) {
        TextTable table = new TextTable(List.of(Side.LEFT, Side.RIGHT, Side.RIGHT, Side.RIGHT));
        table.row("", "this one", "the other", "better by");
        for (Objective objective : question.ordered()) {
            table.row(
                    CassettesReport.name(objective) + " " + objective.unit(),
                    value(objective, beaten.cassette().values()),
                    value(objective, beaten.by().values()),
                    reader.number(beaten.lead().get(objective), CassettesReport.decimals(objective)));
        }
        return "%s is beaten by %s:\n%s"
                .formatted(
                        CassettesReport.cogs(beaten.cassette().cassette()),
                        CassettesReport.cogs(beaten.by().cassette()),
                        table);
    }

    /** What one tooth more or fewer does to each inner cog. */
    String of(CassettesReport.Around around) {
        Measures here = Measures.of(around.cassette(), question.mass());
        String title = CassettesReport.cogs(around.cassette()) + ": " + values(here) + ".\n";
        if (around.neighbours().isEmpty()) {
            return title + "No inner cog can have one tooth more or fewer.\n";
        }
        List<String> header = new ArrayList<>(List.of("cog", "cogs"));
        measures.forEach(objective -> header.add(CassettesReport.name(objective) + " " + objective.unit()));
        header.add("breaks");
        List<Side> sides = new ArrayList<>(Collections.nCopies(header.size(), Side.RIGHT));
        sides.set(0, Side.LEFT);
        sides.set(1, Side.LEFT);
        sides.set(sides.size() - 1, Side.LEFT);
        TextTable table = new TextTable(sides).row(header.toArray(String[]::new));
        around.neighbours().forEach(one -> table.row(row(one).toArray(String[]::new)));
        return title + table;
    }

    private List<String> row(Neighbour neighbour) {
        Found found = neighbour.found();
        List<String> row = new ArrayList<>(
                List.of(neighbour.from() + " to " + neighbour.to(), CassettesReport.cogs(found.cassette())));
        measures.forEach(objective ->
                row.add(reader.signed(neighbour.change().get(objective), CassettesReport.decimals(objective))));
        row.add(neighbour.broken().map(Limit::id).orElse(""));
        return row;
    }
}
