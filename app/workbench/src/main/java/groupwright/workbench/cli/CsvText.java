package groupwright.workbench.cli;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Rows as comma separated values, quoted as RFC 4180 says; lines end with a line feed. */
final class CsvText {
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.][0-9]+)?");
    private static final Pattern RUNS = Pattern.compile("(?s)[=+\\-@\\t\\r].*");
    private static final Pattern NEEDS_QUOTES = Pattern.compile("(?s).*[\",\\n\\r].*");

    private final StringBuilder text = new StringBuilder();

    /** Adds a row. */
    CsvText row(List<String> cells) {
        text.append(cells.stream().map(CsvText::cell).collect(Collectors.joining(",")))
                .append('\n');
        return this;
    }

    /** What a spreadsheet would run as a formula gets an apostrophe in front. */
    private static String cell(String cell) {
        String safe = RUNS.matcher(cell).matches() && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
        return NEEDS_QUOTES.matcher(safe).matches() ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
