package groupwright.documents.template;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartTable;
import groupwright.documents.content.BlockAnswer;
import groupwright.documents.content.Column;
import groupwright.documents.content.Inline;
import groupwright.documents.content.Phrase;
import groupwright.documents.labels.Labels;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceRegister;
import groupwright.documents.tree.ChartBlock;
import groupwright.documents.tree.CriterionBar;
import groupwright.documents.tree.LiveNumber;
import groupwright.documents.tree.ShownPlaces;
import groupwright.documents.tree.TraceMark;
import groupwright.documents.tree.VerdictMark;
import java.util.List;
import java.util.stream.IntStream;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.BulletList;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;

/** Makes tree nodes from answers, and registers the numbers in the order in which they are made. */
final class Nodes {
    private final Labels labels;
    private final TraceRegister register;

    Nodes(Labels labels, TraceRegister register) {
        this.labels = labels;
        this.register = register;
    }

    Node inline(Inline part) {
        if (part instanceof Inline.Plain plain) {
            return new Text(PlainText.of(plain.text()));
        } else if (part instanceof Inline.Live live) {
            return new LiveNumber(live.shown(), register.use(live.entry()));
        } else if (part instanceof Inline.Judged judged) {
            return new VerdictMark(
                    judged.verdict(), labels.text(judged.verdict().labelKey()));
        } else if (part instanceof Inline.Places places) {
            return new ShownPlaces(
                    places.entries().stream().map(register::numberOf).distinct().toList());
        }
        return new CriterionBar((Inline.Bar) part);
    }

    BulletList list(BlockAnswer.Items items) {
        BulletList list = new BulletList();
        list.setMarker("-");
        list.setTight(true);
        for (Phrase item : items.items()) {
            ListItem node = new ListItem();
            node.setMarkerIndent(0);
            node.setContentIndent(2);
            node.appendChild(paragraph(item));
            list.appendChild(node);
        }
        return list;
    }

    Paragraph paragraph(Phrase phrase) {
        Paragraph paragraph = new Paragraph();
        fill(paragraph, phrase);
        return paragraph;
    }

    Paragraph paragraph(String fixedWords) {
        Paragraph paragraph = new Paragraph();
        paragraph.appendChild(new Text(fixedWords));
        return paragraph;
    }

    TableBlock table(BlockAnswer.Table table) {
        TableBlock block = new TableBlock();
        TableHead head = new TableHead();
        List<Phrase> heads =
                table.columns().stream().map(column -> Phrase.of(column.head())).toList();
        head.appendChild(row(heads, table.columns()));
        block.appendChild(head);
        TableBody body = new TableBody();
        table.rows().forEach(row -> body.appendChild(row(row, table.columns())));
        block.appendChild(body);
        return block;
    }

    ChartBlock chart(Chart chart) {
        ChartBlock block = new ChartBlock(chart);
        block.appendChild(paragraph(Phrase.of(chart.description())));
        block.appendChild(table(table(chart.table())));
        return block;
    }

    /** Marks that lead to entries, to stand behind a caption. */
    List<Node> marks(List<TraceEntry> entries) {
        return entries.stream()
                .<Node>map(entry -> new TraceMark(register.use(entry)))
                .toList();
    }

    private static BlockAnswer.Table table(ChartTable numbers) {
        List<Column> columns = IntStream.range(0, numbers.heads().size())
                .mapToObj(i -> i < numbers.texts()
                        ? Column.text(numbers.heads().get(i))
                        : Column.number(numbers.heads().get(i)))
                .toList();
        return new BlockAnswer.Table(
                columns,
                numbers.rows().stream()
                        .map(row -> row.stream().map(Phrase::of).toList())
                        .toList());
    }

    private TableRow row(List<Phrase> phrases, List<Column> columns) {
        TableRow row = new TableRow();
        for (int i = 0; i < phrases.size(); i++) {
            TableCell cell = new TableCell();
            cell.setAlignment(alignment(columns.get(i).alignment()));
            fill(cell, phrases.get(i));
            row.appendChild(cell);
        }
        return row;
    }

    private static TableCell.Alignment alignment(Column.Alignment alignment) {
        return switch (alignment) {
            case START -> TableCell.Alignment.LEFT;
            case CENTRE -> TableCell.Alignment.CENTER;
            case END -> TableCell.Alignment.RIGHT;
        };
    }

    private void fill(Node parent, Phrase phrase) {
        phrase.parts().forEach(part -> parent.appendChild(inline(part)));
    }
}
