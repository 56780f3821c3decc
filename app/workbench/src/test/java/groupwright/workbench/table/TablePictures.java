package groupwright.workbench.table;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.FakeBench;
import groupwright.workbench.form.FormPictures;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.notation.Notations;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Paints a table of parts into files, for people to look at: arguments are a folder. */
final class TablePictures {
    private TablePictures() {}

    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (Theme theme : Theme.values()) {
            Look.setUp(theme, 1);
            FakeBench bench = new FakeBench(Locale.UK, Sample.definition());
            Notations notations = new Notations(Locale.UK, bench::definition, Catalogue.ofServices());
            RecordColumns reading = new RecordColumns(notations);
            List<TableColumn> columns = reading.of(RecordKinds.PART);
            List<String> shown = List.of("id", "title", "mass_g", "basis", "unitCost_minor", "configuration");
            RecordTable table = new RecordTable(bench, notations, columns, shown, "Parts");
            table.show(reading.rows(
                    bench.definition().all(RecordKinds.PART), columns, (column, record) -> TableCell.of("")));
            table.select(Set.of(new RecordId("P-004")));
            table.table().editCellAt(6, 2);
            ((CellEditor) table.table().getCellEditor()).field().setText("12o");
            table.table().getCellEditor().stopCellEditing();
            FormPictures.save(table, 856, 420, folder.resolve("parts-" + theme + ".png"));
        }
    }
}
