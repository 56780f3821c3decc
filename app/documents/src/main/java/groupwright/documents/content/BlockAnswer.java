package groupwright.documents.content;

import groupwright.documents.charts.Chart;
import groupwright.documents.trace.TraceEntry;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The answer to a block of a template. */
public sealed interface BlockAnswer
        permits BlockAnswer.Table,
                BlockAnswer.Drawing,
                BlockAnswer.Items,
                BlockAnswer.Paragraph,
                BlockAnswer.Repeated,
                BlockAnswer.Chosen,
                Unanswered {
    /**
     * A table. The body of the block in the template, if any, becomes its caption.
     *
     * @param columns at least one
     * @param rows each with one cell for each column
     */
    record Table(List<Column> columns, List<List<Phrase>> rows) implements BlockAnswer {
        public Table {
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            if (columns.isEmpty()) {
                throw new IllegalArgumentException("a table needs at least one column");
            }
            for (List<Phrase> row : rows) {
                if (row.size() != columns.size()) {
                    throw new IllegalArgumentException(
                            "a row has " + row.size() + " cells, the table " + columns.size() + " columns");
                }
            }
        }
    }

    /**
     * A chart, drawn on paper; in Markdown its description and its table. The body of the block in the template becomes
     * its caption; without one the chart's title and caption do.
     *
     * @param entries where its numbers come from; the caption leads there
     */
    record Drawing(Chart chart, List<TraceEntry> entries) implements BlockAnswer {
        public Drawing {
            Objects.requireNonNull(chart, "chart");
            entries = List.copyOf(entries);
        }
    }

    /** A bullet list. */
    record Items(List<Phrase> items) implements BlockAnswer {
        public Items {
            items = List.copyOf(items);
        }
    }

    /** A paragraph. */
    record Paragraph(Phrase phrase) implements BlockAnswer {
        public Paragraph {
            Objects.requireNonNull(phrase, "phrase");
        }
    }

    /**
     * Repeated sections: the body of the block in the template is a template itself, filled once from each content.
     * Each content should also answer what the outer one answers.
     */
    record Repeated(List<Content> contents) implements BlockAnswer {
        public Repeated {
            contents = List.copyOf(contents);
        }
    }

    /**
     * A section on a condition: the body of the block in the template is a template itself, filled once or left out.
     *
     * @param content what fills it; nothing where it is left out, and then it is not read either
     */
    record Chosen(Optional<Content> content) implements BlockAnswer {
        public Chosen {
            Objects.requireNonNull(content, "content");
        }
    }
}
