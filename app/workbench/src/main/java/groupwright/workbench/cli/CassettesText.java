package groupwright.workbench.cli;

import groupwright.definition.cassettes.Judged;
import groupwright.definition.figure.Verdict;
import groupwright.documents.numbers.Reader;
import groupwright.drivetrain.search.Columns;
import groupwright.drivetrain.search.Coverage;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Objective;
import groupwright.workbench.cli.TextTable.Side;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;

/** What a search for cassettes found, for people. */
final class CassettesText {
    private final CassettesReport report;
    private final Reader reader;
    private final List<Objective> measures;

    CassettesText(CassettesReport report, Reader reader) {
        this.report = report;
        this.reader = reader;
        measures = Arrays.stream(Objective.values())
                .filter(objective -> objective != Objective.GEAR_RANGE || report.isOverRanges())
                .toList();
    }

    /** What was typed in is answered alone; else the cassettes. Below, what the answer covers. */
    String text() {
        StringBuilder text = new StringBuilder();
        StandingText standing = new StandingText(report.question(), measures, reader);
        report.why()
                .ifPresent(one ->
                        text.append(standing.of(one, report.best().count())).append('\n'));
        report.neighbours().ifPresent(around -> text.append(standing.of(around)).append('\n'));
        if (text.isEmpty()) {
            text.append(cassettes());
        }
        text.append(coverage());
        report.judgement().ifPresent(judgement -> text.append('\n').append(project(judgement)));
        return text.toString();
    }

    private String cassettes() {
        List<Found> shown = report.spread().shown();
        if (shown.isEmpty()) {
            return "No cassette keeps all limits.\n\n";
        }
        List<String> header = header();
        List<Side> sides = new ArrayList<>(Collections.nCopies(header.size(), Side.RIGHT));
        sides.set(0, Side.LEFT);
        report.judgement()
                .ifPresent(judgement -> Collections.fill(
                        sides.subList(sides.size() - judgement.riders().size() - 1, sides.size()), Side.LEFT));
        TextTable table = new TextTable(sides).row(header.toArray(String[]::new));
        for (int i = 0; i < shown.size(); i++) {
            table.row(row(shown.get(i), i).toArray(String[]::new));
        }
        return table + "\n";
    }

    private List<String> header() {
        List<String> header = new ArrayList<>(List.of("cogs"));
        measures.forEach(objective -> header.add(CassettesReport.name(objective) + " " + objective.unit()));
        if (report.use().isPresent()) {
            header.addAll(List.of("longest wait s", "side travel mm"));
        }
        report.judgement().ifPresent(judgement -> {
            judgement.riders().forEach(group -> header.add(group.id().text()));
            header.add("misses");
        });
        return header;
    }

    private List<String> row(Found found, int at) {
        List<String> row = new ArrayList<>(List.of(CassettesReport.cogs(found.cassette())));
        measures.forEach(
                objective -> row.add(reader.number(found.values().in(objective), CassettesReport.decimals(objective))));
        report.use().map(use -> Columns.of(found.cassette(), use)).ifPresent(columns -> {
            row.add(reader.number(columns.longestWaitS(), 2));
            row.add(reader.number(columns.sideTravelMm(), 1));
        });
        report.judgement().ifPresent(judgement -> {
            Judged judged = judgement.shown().get(at);
            judgement
                    .riders()
                    .forEach(group -> row.add(
                            judged.forRiders(group.id()).map(Verdict::words).orElse("")));
            row.add(misses(judged));
        });
        return row;
    }

    /** The requirements of which a criterion is missed. */
    private static String misses(Judged judged) {
        return judged.missed().stream()
                .map(held -> held.criterion().requirement().id().text())
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private String coverage() {
        Coverage coverage = report.best().coverage();
        TextTable table = new TextTable(List.of(Side.RIGHT, Side.LEFT));
        table.row(number(coverage.candidates()), "cassettes within ends and count");
        for (Coverage.Removed removed : coverage.removed()) {
            table.row(
                    number(removed.cassettes()),
                    "removed: each must " + removed.limit().demand());
        }
        table.row(number(coverage.admitted()), "left");
        long best = report.spread().outOf();
        int shown = report.spread().shown().size();
        table.row(
                number(BigInteger.valueOf(best)),
                "beaten by no other " + among() + (shown < best ? ", " + shown + " shown" : ""));
        return table + "\n"
                + "Compared by "
                + report.question().ordered().stream()
                        .map(CassettesReport::name)
                        .collect(Collectors.joining(", "))
                + ". Mass: an estimate of the sprockets alone, plates of 1.8 mm steel of which 40 % are left.\n";
    }

    private String among() {
        return report.isOverRanges() && !report.question().comparesAll() ? "of the same ends and count" : "of these";
    }

    private String number(BigInteger count) {
        // beyond 2^53 a double would change digits
        return count.bitLength() <= 53 ? reader.number(count.doubleValue(), 0) : count.toString();
    }

    private String project(Judgement judgement) {
        StringBuilder text = new StringBuilder();
        if (judgement.judgedBy().isEmpty()) {
            return "No requirement of the project depends on the cogs.\n";
        }
        text.append("Judged in ")
                .append(judgement.concept())
                .append(judgement.rings().size() == 1 ? " with ring " : " with rings ")
                .append(judgement.rings().stream().map(String::valueOf).collect(Collectors.joining(", ")))
                .append(" by ")
                .append(
                        judgement.judgedBy().size() == 1
                                ? "1 criterion"
                                : judgement.judgedBy().size() + " criteria")
                .append(". ")
                .append(judgement.riders().stream()
                        .map(group -> group.id() + " " + group.title())
                        .collect(Collectors.joining(", ")))
                .append(".\nIts cogs of today, ")
                .append(CassettesReport.cogs(judgement.today().cassette()))
                .append(
                        judgement.today().missesNothing()
                                ? ", miss nothing.\n"
                                : ", miss " + misses(judgement.today()) + ".\n");
        if (!judgement.shown().isEmpty()) {
            text.append(number(BigInteger.valueOf(judgement.missNothing())))
                    .append(" of the ")
                    .append(number(BigInteger.valueOf(judgement.shown().size())))
                    .append(" shown miss nothing.\n");
        }
        return text + new RelaxationText(reader).of(judgement.relaxing());
    }
}
