package groupwright.workbench.cli;

import groupwright.definition.cassettes.Judged;
import groupwright.definition.figure.Verdict;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.search.Columns;
import groupwright.drivetrain.search.Found;
import groupwright.drivetrain.search.Objective;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The cassettes shown, a row each, for spreadsheets. */
final class CassettesCsv {
    private CassettesCsv() {}

    /** The header names each column with its unit; cogs are parted by blanks, which no spreadsheet takes for a date. */
    static String of(CassettesReport report) {
        CsvText csv = new CsvText().row(header(report));
        List<Found> shown = report.spread().shown();
        for (int i = 0; i < shown.size(); i++) {
            csv.row(row(report, shown.get(i), i));
        }
        return csv.toString();
    }

    private static List<String> header(CassettesReport report) {
        List<String> header = new ArrayList<>(List.of("cogs"));
        for (Objective objective : Objective.values()) {
            header.add(CassettesReport.name(objective) + " (" + objective.unit() + ")");
        }
        if (report.use().isPresent()) {
            header.addAll(List.of("longest wait (s)", "side travel (mm)"));
        }
        report.judgement().ifPresent(judgement -> {
            judgement.riders().stream().map(CassettesCsv::name).forEach(header::add);
            header.add("misses");
        });
        return header;
    }

    private static String name(RiderGroup group) {
        return group.id() + " " + group.title();
    }

    private static List<String> row(CassettesReport report, Found found, int at) {
        List<String> row = new ArrayList<>(List.of(CassettesReport.cogs(found.cassette())));
        for (Objective objective : Objective.values()) {
            row.add(ValueText.number(found.values().in(objective)));
        }
        report.use().map(use -> Columns.of(found.cassette(), use)).ifPresent(columns -> {
            row.add(ValueText.number(columns.longestWaitS()));
            row.add(ValueText.number(columns.sideTravelMm()));
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

    private static String misses(Judged judged) {
        return judged.missed().stream().map(held -> held.criterion().name()).collect(Collectors.joining(" "));
    }
}
