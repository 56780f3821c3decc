package groupwright.workbench.table;

import groupwright.definition.record.Component;
import groupwright.workbench.components.PaintedCell;
import groupwright.workbench.components.Painter;
import java.util.Optional;
import javax.swing.table.TableCellRenderer;

/**
 * A column.
 *
 * @param key tells it from others; the field's name where it shows a field
 * @param head its name, in sentence case
 * @param help what it holds, in words
 * @param kind how its cells stand
 * @param width usual width at 100 %
 * @param field the field it shows and edits; nothing where it is computed
 * @param renderer what paints its cells; nothing where text does
 */
public record TableColumn(
        String key,
        String head,
        String help,
        Kind kind,
        int width,
        Optional<Component> field,
        Optional<TableCellRenderer> renderer) {
    /** How cells stand. */
    public enum Kind {
        WORDS,
        /** At the right, with room for units behind. */
        NUMBERS
    }

    /** A computed column of words or numbers. */
    public static TableColumn computed(String key, String head, String help, Kind kind, int width) {
        return new TableColumn(key, head, help, kind, width, Optional.empty(), Optional.empty());
    }

    /**
     * A computed column that a painter paints.
     *
     * @param padding at the left and right of what is painted, at 100 %
     */
    public static <V> TableColumn painted(
            String key, String head, String help, int width, Class<V> type, Painter<V> painter, int padding) {
        return new TableColumn(
                key,
                head,
                help,
                Kind.WORDS,
                width,
                Optional.empty(),
                Optional.of(new PaintedCell<>(type, painter, padding)));
    }
}
