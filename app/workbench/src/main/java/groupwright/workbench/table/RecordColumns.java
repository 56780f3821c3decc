package groupwright.workbench.table;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.Entry;
import groupwright.definition.record.FieldType;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKind;
import groupwright.definition.record.Shape;
import groupwright.workbench.notation.FieldWords;
import groupwright.workbench.notation.Notations;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/** Columns and rows of a kind of record, read from its description. */
public final class RecordColumns {
    private static final int WORDS = 200;
    private static final int SHORT = 112;
    private static final int NUMBER = 128;
    private static final int MOST_UNIT = 5;

    private final Notations notations;

    public RecordColumns(Notations notations) {
        this.notations = notations;
    }

    /** A column for every field that is one value, in the order of the description. */
    public List<TableColumn> of(RecordKind<?> kind) {
        List<TableColumn> columns = new ArrayList<>();
        for (Component component : kind.shape().components()) {
            if (Notations.isPlain(component.type())) {
                columns.add(column(component));
            }
        }
        return columns;
    }

    private TableColumn column(Component component) {
        FieldType type = component.type();
        boolean number = type instanceof FieldType.Whole || type instanceof FieldType.Number;
        boolean brief =
                type instanceof FieldType.Choice || type instanceof FieldType.Day || type instanceof FieldType.OwnId;
        return new TableColumn(
                component.name(),
                FieldWords.label(component) + (isLong(component.unit()) ? ", " + component.unit() : ""),
                notations.words().help(component),
                number ? TableColumn.Kind.NUMBERS : TableColumn.Kind.WORDS,
                number && isLong(component.unit()) ? WORDS : number ? NUMBER : brief ? SHORT : WORDS,
                Optional.of(component),
                Optional.empty());
    }

    /** Such a unit stands in the head, since the room behind numbers is too narrow for it. */
    private static boolean isLong(String unit) {
        return unit.length() > MOST_UNIT;
    }

    /**
     * The rows of records, in their order. O(records · columns).
     *
     * @param computed the cells of columns that show no field
     */
    public List<TableRow> rows(
            List<? extends Entry> records,
            List<TableColumn> columns,
            BiFunction<TableColumn, Entry, TableCell> computed) {
        List<TableRow> rows = new ArrayList<>();
        for (Entry record : records) {
            List<TableCell> cells = new ArrayList<>();
            for (TableColumn column : columns) {
                TableCell cell = column.field()
                        .map(field -> cell(field, record))
                        .orElseGet(() -> computed.apply(column, record));
                cells.add(record.isCurrent() ? cell : cell.in(TableCell.State.MUTED));
            }
            rows.add(new TableRow(record.id(), cells));
        }
        return rows;
    }

    private TableCell cell(Component field, Entry record) {
        Shape<?> shape = Shape.of(record.getClass());
        Object value = shape.value(record, shape.indexOf(field.name()));
        Optional<?> present = value instanceof Optional<?> optional ? optional : Optional.of(value);
        String text = notations.of(shape, field, record).shown(present).replaceAll("\\s*\\R\\s*", " ");
        String own = Notations.unit(shape, field, record);
        String unit = present.isPresent() && !isLong(own) ? own : "";
        Object order = present.map(RecordColumns::order).orElse("");
        return new TableCell(text, unit, order.equals("") ? text : order, text, TableCell.State.PLAIN);
    }

    private static Object order(Object value) {
        if (value instanceof Amount amount) {
            return amount.value();
        } else if (value instanceof Integer whole) {
            return whole.doubleValue();
        } else if (value instanceof Enum<?> word) {
            return (double) word.ordinal(); // in the order of their meaning
        }
        return value instanceof RecordId id ? id : "";
    }
}
