package groupwright.workbench.requirements;

import groupwright.definition.figure.Ask;
import groupwright.documents.trace.ShownValue;
import groupwright.workbench.components.Bar;
import groupwright.workbench.components.Chip;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What the cells of a row say.
 *
 * @param since what the last step changed
 * @param inWorkings tells the figure that Workings shows
 * @param widths room for units
 */
record Cells(Words words, Since since, Supplier<Optional<Ask>> inWorkings, Widths widths) {
    private static final double WHERE_AT = 122;

    Cell of(Listing.Line line, Column column, Chosen chosen) {
        boolean first = line.place() == Listing.Place.FIRST;
        return switch (column) {
            case LADDER -> first ? new Cell.Climbed(line.listed().ladder()) : new Cell.Empty();
            case ID -> first ? id(line, chosen) : new Cell.Empty();
            case TITLE -> title(line, chosen);
            default ->
                line.row() instanceof Row.Measured row
                        ? measured(row, line, column)
                        : note((Row.Note) line.row(), column);
        };
    }

    /** Whether a row is the selected one. */
    enum Chosen {
        SELECTED,
        OTHER;

        private Weight weight() {
            return this == SELECTED ? Weight.STRONG : Weight.REGULAR;
        }
    }

    private static Cell id(Listing.Line line, Chosen chosen) {
        String id = line.listed().id().text();
        return new Cell.Words(id, chosen.weight(), chosen == Chosen.SELECTED ? Token.INK : Token.MUTED, id);
    }

    private Cell title(Listing.Line line, Chosen chosen) {
        String said = said(line);
        return line.place() == Listing.Place.FIRST
                ? new Cell.Words(line.listed().title(), chosen.weight(), Token.INK, said)
                : new Cell.Words("", Weight.REGULAR, Token.INK, said);
    }

    /** A row in one sentence. */
    String said(Listing.Line line) {
        String name = line.listed().id() + " " + line.listed().title();
        if (line.row() instanceof Row.Note note) {
            return words.text("said.note", name, note.sentence());
        }
        Row.Measured row = (Row.Measured) line.row();
        return words.text(
                "said.measured",
                name,
                row.figure() + (row.whereTold().isEmpty() ? "" : " " + row.whereTold()),
                row.limit().comparator() + " "
                        + new ShownValue(row.limit().number(), row.limit().unit()).text(),
                row.value().map(ShownValue::text).orElseGet(() -> words.text("value.missing")),
                row.verdict().map(verdict -> verdict.words()).orElseGet(() -> words.text("verdict.none")));
    }

    private Cell note(Row.Note note, Column column) {
        return column == Column.VERDICT
                ? new Cell.Words(
                        words.text("step." + note.step().name()),
                        Weight.STRONG,
                        Token.ACCENT,
                        words.text("step." + note.step().name()))
                : new Cell.Empty();
    }

    private Cell measured(Row.Measured row, Listing.Line line, Column column) {
        return switch (column) {
            case FIGURE -> new Cell.Figure(row.figure(), row.where(), WHERE_AT, row.figure() + " " + row.whereTold());
            case TARGET -> target(row);
            case VALUE -> value(row, line);
            case BAR -> bar(row);
            case MARGIN -> margin(row);
            case VERDICT -> verdict(row);
            case LADDER, ID, TITLE -> new Cell.Empty();
        };
    }

    private Cell target(Row.Measured row) {
        Row.Limit limit = row.limit();
        String text = limit.comparator() + " " + new ShownValue(limit.number(), limit.unit()).text();
        Chip chip = Chip.of(limit.number(), limit.unit(), text, text);
        return new Cell.Amount(
                limit.comparator(), since.target(row).isPresent() ? chip.changed() : chip, widths.targetUnit());
    }

    private Cell value(Row.Measured row, Listing.Line line) {
        if (row.verdict().isEmpty()) {
            return new Cell.Empty();
        }
        String name = said(line);
        Chip chip = row.value()
                .map(value -> Chip.of(value.value(), value.unit(), name, copy(row, value))
                        .in(Type.TABLE, Weight.STRONG))
                .orElseGet(() -> Chip.missing(words.text("value.missing"), name, "", tip(row)));
        Chip since = this.since.value(row) ? chip.changed() : chip;
        boolean here = row.ask().isPresent() && row.ask().equals(inWorkings.get());
        return new Cell.Amount("", here ? since.at(Chip.Line.SELECTED) : since, widths.valueUnit());
    }

    private static String copy(Row.Measured row, ShownValue value) {
        return value.text() + row.ask().map(ask -> "  " + ask).orElse("");
    }

    private static String tip(Row.Measured row) {
        return row.missing()
                .map(missing -> missing.address() + ": " + missing.remedy())
                .orElse("");
    }

    private Cell bar(Row.Measured row) {
        if (row.bar().isEmpty()) {
            return new Cell.Empty();
        }
        String said = row.margin().isEmpty() ? words.text("bar.none") : words.text("bar.margin", row.margin());
        Bar bar = Bar.of(row.bar().get(), said);
        return new Cell.Reach(row.stretch().map(bar::withStretch).orElse(bar));
    }

    private Cell margin(Row.Measured row) {
        if (row.verdict().isEmpty()) {
            return new Cell.Empty();
        }
        String text = row.margin().isEmpty() ? "–" : row.margin();
        return new Cell.Number(text, row.margin().isEmpty() ? words.text("bar.none") : words.text("bar.margin", text));
    }

    private Cell verdict(Row.Measured row) {
        Locale locale = words.locale();
        return row.verdict()
                .<Cell>map(verdict -> new Cell.Judged(Marked.of(Mark.of(verdict), locale), verdict.words()))
                .orElseGet(Cell.Empty::new);
    }
}
