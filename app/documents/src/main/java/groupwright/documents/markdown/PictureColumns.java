package groupwright.documents.markdown;

import groupwright.documents.tree.CriterionBar;
import java.util.BitSet;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;

/** Columns that hold nothing but bars, which Markdown cannot draw and therefore leaves out. */
final class PictureColumns {
    private PictureColumns() {}

    /** Indices of those columns. */
    static BitSet of(TableBlock table) {
        BitSet withBars = new BitSet();
        BitSet withText = new BitSet();
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            if (part instanceof TableBody) {
                for (Node row = part.getFirstChild(); row != null; row = row.getNext()) {
                    look((TableRow) row, withBars, withText);
                }
            }
        }
        withBars.andNot(withText);
        return withBars;
    }

    private static void look(TableRow row, BitSet withBars, BitSet withText) {
        int column = 0;
        for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
            for (Node part = cell.getFirstChild(); part != null; part = part.getNext()) {
                (part instanceof CriterionBar ? withBars : withText).set(column);
            }
            column++;
        }
    }
}
