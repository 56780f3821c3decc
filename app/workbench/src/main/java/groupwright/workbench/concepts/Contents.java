package groupwright.workbench.concepts;

import groupwright.documents.charts.ConceptSign;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.ConceptMark;
import groupwright.workbench.components.ConceptTag;
import groupwright.workbench.lists.ContentCell;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.util.function.Consumer;

/** Makes what stands in the cells of the table out of the sheet. */
record Contents(ConceptsSheet sheet, Widths widths, Bench bench, Words words) {
    /** Rows of figures, and one for what is met. */
    int rows() {
        return sheet.rows().size() + 1;
    }

    boolean isLast(int row) {
        return row == sheet.rows().size();
    }

    private record Painted(String name, Consumer<Drawing> painting) implements ContentCell.Content {
        @Override
        public void paint(Drawing drawing) {
            painting.accept(drawing);
        }
    }

    private Weight weight(int concept) {
        return sheet.concepts().get(concept).sign().standing() == ConceptSign.Standing.LEAD
                ? Weight.STRONG
                : Weight.REGULAR;
    }

    ContentCell.Content cell(int row, int concept) {
        if (isLast(row)) {
            return meets(concept);
        }
        Compared compared =
                Compared.of(sheet.rows().get(row).cells().get(concept), weight(concept), bench, words, widths);
        String tip = compared.chip().tip();
        return new Painted(
                tip.isEmpty() || compared.chip().name().contains(tip)
                        ? compared.chip().name()
                        : compared.chip().name() + ", " + tip,
                drawing -> Compared.PAINTER.paint(drawing, compared));
    }

    private ContentCell.Content meets(int concept) {
        String number = Integer.toString(sheet.meets().get(concept));
        String name =
                words.text("meets.name", sheet.concepts().get(concept).id(), number, Integer.toString(sheet.targets()));
        return new Painted(name, drawing -> {
            drawing.level(0, drawing.width(), 0, 1, Token.INK);
            drawing.textUpTo(
                    number,
                    widths.value() - Metric.UNIT_COLUMN.units(),
                    baseline(drawing),
                    Type.TABLE,
                    Weight.STRONG,
                    Token.INK);
        });
    }

    private static double baseline(Drawing drawing) {
        return Type.TABLE.baseline(drawing.height() / 2);
    }

    ContentCell.Content figure(int row) {
        return indented(figureOf(row));
    }

    private ContentCell.Content figureOf(int row) {
        if (isLast(row)) {
            String text = words.text("meets", Integer.toString(sheet.targets()));
            return new Painted(text, drawing -> {
                drawing.level(-Metric.GAP.units(), drawing.width(), 0, 1, Token.INK);
                drawing.text(text, 0, baseline(drawing), Type.TABLE, Weight.STRONG, Token.INK);
            });
        }
        ConceptsSheet.Row shown = sheet.rows().get(row);
        return new Painted(said(shown), drawing -> {
            double room = shown.where().isEmpty() ? drawing.width() : widths.whereAt();
            if (shown.place() == ConceptsSheet.Place.FIRST) {
                String name = Type.TABLE.cut(shown.figure(), Weight.REGULAR, room);
                drawing.text(name, 0, baseline(drawing), Type.TABLE, Weight.REGULAR, Token.INK);
            }
            String where = Type.TABLE.cut(shown.where(), Weight.REGULAR, drawing.width() - widths.whereAt());
            drawing.text(where, widths.whereAt(), baseline(drawing), Type.TABLE, Weight.REGULAR, Token.MUTED);
        });
    }

    private String said(ConceptsSheet.Row row) {
        String limit = row.limit().map(ConceptsSheet.Limit::text).orElseGet(() -> words.text("target.none"));
        return row.requirement()
                .map(id -> words.text("left.open", row.figure(), row.where(), limit, id))
                .orElseGet(() -> words.text("left.name", row.figure(), row.where(), limit))
                .replace(" ,", ",");
    }

    ContentCell.Content target(int row) {
        if (isLast(row)) {
            return new Painted("", drawing -> drawing.level(0, drawing.width(), 0, 1, Token.INK));
        }
        ConceptsSheet.Row shown = sheet.rows().get(row);
        return new Painted(said(shown), drawing -> {
            double baseline = baseline(drawing);
            if (shown.limit().isEmpty()) {
                String none = words.text("target.none");
                drawing.text(none, 0, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED);
                return;
            }
            ConceptsSheet.Limit limit = shown.limit().get();
            double gap = limit.unit().startsWith("°") ? 0 : Widths.GAP / 2;
            double unit = gap + Type.CAPTION.width(limit.unit(), Weight.REGULAR);
            double unitX = drawing.width() - Math.max(unit, Metric.UNIT_COLUMN.units());
            drawing.text(limit.comparator(), 0, baseline, Type.TABLE, Weight.REGULAR, Token.MUTED);
            drawing.textUpTo(limit.number(), unitX, baseline, Type.TABLE, Weight.REGULAR, Token.INK);
            drawing.text(limit.unit(), unitX + gap, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
        });
    }

    ContentCell.Content head(int concept) {
        ConceptsSheet.Entrant entrant = sheet.concepts().get(concept);
        ConceptTag tag = ConceptTag.of(entrant.sign(), entrant.id().text(), entrant.setUp(), words.locale());
        return new Painted(tag.name(), drawing -> new ConceptMark(Type.TABLE, Token.GROUND).paint(drawing, tag));
    }

    ContentCell.Content figureHead() {
        return indented(leftHead("head.figure"));
    }

    ContentCell.Content targetHead() {
        ContentCell.Content word = leftHead("head.target");
        String scale = words.text("head.scale");
        return new Painted(word.name() + ", " + scale, drawing -> {
            word.paint(drawing);
            double baseline = Type.CAPTION.baseline(drawing.height() / 2);
            drawing.textUpTo(scale, drawing.width() - Widths.GAP, baseline, Type.CAPTION, Weight.REGULAR, Token.MUTED);
        });
    }

    private ContentCell.Content leftHead(String key) {
        String text = words.text(key);
        return new Painted(
                text,
                drawing -> drawing.text(
                        text, 0, Type.TABLE.baseline(drawing.height() / 2), Type.TABLE, Weight.STRONG, Token.MUTED));
    }

    /** The first column begins where the title of the place does. */
    private static ContentCell.Content indented(ContentCell.Content content) {
        return new Painted(content.name(), drawing -> {
            double left = Metric.GAP.units() - Widths.GAP;
            try (Drawing inner = drawing.part(left, 0, drawing.width() - left, drawing.height())) {
                content.paint(inner);
            }
        });
    }
}
