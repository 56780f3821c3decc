package groupwright.workbench.records;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.ledger.View;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordKind;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bench.Place;
import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.look.Words;
import groupwright.workbench.notation.Notations;
import groupwright.workbench.table.RecordColumns;
import groupwright.workbench.table.TableCell;
import groupwright.workbench.table.TableColumn;
import groupwright.workbench.table.TableRow;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;

/** Lists records of some kinds, one kind at a time, with the form of the one selected below. */
public final class RecordsPlace implements Place {
    /**
     * A kind of record that is shown here.
     *
     * @param columns names of the fields shown at first
     */
    public record Shown(RecordKind<?> kind, List<String> columns) {
        public Shown {
            columns = List.copyOf(columns);
        }
    }

    private final PlaceName name;
    private final List<Shown> kinds;
    private final RecordColumns columns;
    private final RecordsPanel panel;

    /**
     * @param name which place it is
     * @param kinds the kinds it shows, at least one; the first is shown first
     */
    public RecordsPlace(Bench bench, Catalogue catalogue, PlaceName name, List<Shown> kinds) {
        this.name = name;
        this.kinds = List.copyOf(kinds);
        Notations notations = new Notations(bench.locale(), bench::definition, catalogue);
        this.columns = new RecordColumns(notations);
        this.panel = new RecordsPanel(
                bench,
                catalogue,
                notations,
                Words.of(RecordsPlace.class, bench.locale()),
                name,
                this.kinds.stream()
                        .map(shown -> new RecordsPanel.Listed(shown, columns.of(shown.kind())))
                        .toList());
    }

    @Override
    public PlaceName name() {
        return name;
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public List<Sheet> sheets() {
        return List.of(view -> {
            List<List<TableRow>> rows = new ArrayList<>();
            for (Shown shown : kinds) {
                rows.add(rows(view.definition(), shown));
            }
            return () -> panel.show(rows);
        });
    }

    private List<TableRow> rows(Definition definition, Shown shown) {
        List<Entry> records = new ArrayList<>(definition.all(shown.kind()));
        List<TableColumn> all = columns.of(shown.kind());
        return columns.rows(records, all, RecordsPlace::nothingComputed);
    }

    private static TableCell nothingComputed(TableColumn column, Entry record) {
        throw new IllegalStateException("the column " + column.key() + " of " + record.id() + " shows no field");
    }

    @Override
    public int openThings(View view) {
        return 0;
    }

    @Override
    public void reveal(Address address) {
        panel.reveal(address);
    }
}
