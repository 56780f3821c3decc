package groupwright.workbench.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Part;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.FakeBench;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.notation.Notations;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class RecordTableTest {
    private static final Definition TARNBECK = Sample.definition();
    private static final List<String> SHOWN = List.of("id", "title", "mass_g", "basis");

    private final FakeBench bench = new FakeBench(Locale.UK, TARNBECK);
    private final Notations notations = new Notations(Locale.UK, bench::definition, Catalogue.ofServices());
    private final RecordColumns reading = new RecordColumns(notations);
    private final List<TableColumn> columns = reading.of(RecordKinds.PART);

    @BeforeAll
    static void look() {
        Look.setUp(Theme.LIGHT, 1);
    }

    private RecordTable table() {
        RecordTable table = new RecordTable(bench, notations, columns, SHOWN, "Parts");
        table.show(rows());
        bench.afterEachStep(() -> table.show(rows()));
        return table;
    }

    private List<TableRow> rows() {
        return reading.rows(bench.definition().all(RecordKinds.PART), columns, (column, record) -> TableCell.of(""));
    }

    private int column(String key) {
        return columns.stream().map(TableColumn::key).toList().indexOf(key);
    }

    private static TableRow row(int number, Object order, String text) {
        return new TableRow(
                RecordId.of("P", number), List.of(new TableCell(text, "", order, text, TableCell.State.PLAIN)));
    }

    private static List<Integer> numbers(List<TableRow> rows) {
        return rows.stream().map(row -> row.id().number()).toList();
    }

    @Test
    void numbersSortAsNumbersIdsNaturallyAndEmptyLast() {
        List<TableRow> rows = List.of(row(1, 10.0, "10"), row(2, "", ""), row(3, 9.0, "9"), row(4, -1.0, "−1"));
        RowOrder.Sort rising = new RowOrder.Sort(0, RowOrder.Direction.RISING);
        assertEquals(List.of(4, 3, 1, 2), numbers(RowOrder.sorted(rows, rising)));
        RowOrder.Sort falling = new RowOrder.Sort(0, RowOrder.Direction.FALLING);
        assertEquals(List.of(1, 3, 4, 2), numbers(RowOrder.sorted(rows, falling)));
        List<TableRow> ids =
                List.of(row(1, new RecordId("R-10000"), "R-10000"), row(2, new RecordId("R-9999"), "R-9999"));
        assertEquals(List.of(2, 1), numbers(RowOrder.sorted(ids, rising)));
    }

    @Test
    void fiftyThousandRowsSortStablyFilterAndKeepTheirSelection() {
        long seed = 7;
        Random random = new Random(seed);
        List<TableRow> rows = new ArrayList<>();
        for (int i = 1; i <= 50_000; i++) {
            double value = random.nextInt(100);
            rows.add(row(i, value, Integer.toString((int) value)));
        }
        RecordTable table = new RecordTable(
                bench,
                notations,
                List.of(TableColumn.computed("n", "Number", "A number", TableColumn.Kind.NUMBERS, 100)),
                List.of("n"),
                "Many");
        table.show(rows);
        table.select(Set.of(RecordId.of("P", 40_000)));
        table.model().sort(Optional.of(new RowOrder.Sort(0, RowOrder.Direction.RISING)));
        List<TableRow> sorted = table.model().rows();
        for (int i = 1; i < sorted.size(); i++) {
            double before = (double) sorted.get(i - 1).cells().get(0).order();
            double here = (double) sorted.get(i).cells().get(0).order();
            boolean right = before < here
                    || before == here
                            && sorted.get(i - 1).id().compareTo(sorted.get(i).id()) < 0;
            assertTrue(right, "seed " + seed + ", row " + i);
        }
        table.filter("17");
        assertTrue(table.shownRows() > 300 && table.shownRows() < 700, "rows: " + table.shownRows());
        table.filter("");
        assertEquals(50_000, table.shownRows());
    }

    @Test
    void selectionStaysWithTheRecordThroughSortAndRefresh() {
        RecordTable table = table();
        RecordId third = TARNBECK.all(RecordKinds.PART).get(2).id();
        table.select(Set.of(third));
        new HeadSort(table.table(), table.model(), Runnable::run);
        table.filter("");
        table.show(rows());
        assertEquals(Set.of(third), table.selected());
    }

    @Test
    void aFieldIsEditedInItsCell() {
        RecordTable table = table();
        Part first = TARNBECK.all(RecordKinds.PART).get(0);
        edit(table, "mass_g", "1234,5 ± 2");
        Part now = bench.definition().get(first.id(), Part.class).orElseThrow();
        assertEquals(1234.5, now.mass_g().orElseThrow().value());
        assertEquals(List.of(Optional.empty()), bench.edits());
        assertEquals("1234.5 ± 2", table.model().cell(0, column("mass_g")).text());
    }

    @Test
    void whatIsWrongStaysInTheCellWithItsSentence() {
        RecordTable table = table();
        edit(table, "mass_g", "12o");
        assertEquals("Not a number: “12o”. Type grams, for example 50\u2009000.", table.sentence());
        assertTrue(table.table().isEditing());
        assertSame(TARNBECK, bench.definition());
        table.table().getCellEditor().cancelCellEditing();
        assertEquals("", table.sentence());
    }

    private void edit(RecordTable table, String key, String text) {
        int shown = SHOWN.indexOf(key);
        assertTrue(table.table().editCellAt(0, shown));
        ((CellEditor) table.table().getCellEditor()).field().setText(text);
        table.table().getCellEditor().stopCellEditing();
    }

    @Test
    void idsCannotBeEdited() {
        assertFalse(table().table().editCellAt(0, 0));
    }

    @Test
    void copiesHaveHeadsTabsAndUnits() {
        RecordTable table = table();
        Part first = TARNBECK.all(RecordKinds.PART).get(0);
        table.select(Set.of(first.id()));
        String[] lines = table.copied().split("\n");
        assertEquals("Id\tTitle\tMass\tBasis", lines[0]);
        assertEquals(2, lines.length);
        String mass = notations
                .of(
                        RecordKinds.PART.shape(),
                        RecordKinds.PART.shape().components().get(column("mass_g")),
                        first)
                .shown(first.mass_g());
        assertTrue(lines[1].startsWith(first.id() + "\t" + first.title() + "\t" + mass + " g\t"), lines[1]);
    }

    @Test
    void columnsAreChosen() {
        RecordTable table = table();
        table.columns(List.of("title", "note"));
        assertEquals(2, table.table().getColumnCount());
        assertTrue(table.copied().startsWith("Title\tNote\n"));
    }
}
