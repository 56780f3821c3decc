package groupwright.documents.pages;

import groupwright.documents.charts.Chart;
import groupwright.documents.charts.ChartSize;
import groupwright.documents.pages.Piece.Number.Line;
import groupwright.documents.tree.Caption;
import groupwright.documents.tree.ChartBlock;
import groupwright.documents.tree.LiveNumber;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.node.ThematicBreak;

/** Lays the blocks of a tree out as slabs in a column of text. */
final class BlockLayout extends AbstractVisitor {
    private static final double LEADING = 13.5;
    private static final double SPACE = 5;
    /** Space above that no page holds, in points. */
    private static final double NEW_PAGE = 10_000;

    private static final double INDENT = 13;
    private static final double FRAME = 7;
    private static final double NARROWEST = 60;
    /** How far above a heading viewers that go to it begin. */
    private static final double OUTLINED_ABOVE = 8;
    /** Charts are laid out for screens of 96 pixels an inch. */
    private static final double POINTS_PER_PIXEL = 0.75;
    /** Share of a page; leaves room for the caption. */
    private static final double TALLEST_CHART = 0.85;

    private final Typesetter typesetter;
    private final UsePlaces places;
    private final InlineSetter setter;
    private final LineBreaker breaker;
    private final double x;
    private final double width;
    private final double space;
    private final List<Slab> slabs = new ArrayList<>();

    BlockLayout(Typesetter typesetter, UsePlaces places) {
        this(typesetter, places, PageGeometry.LEFT, PageGeometry.TEXT_WIDTH, SPACE);
    }

    private BlockLayout(Typesetter typesetter, UsePlaces places, double x, double width, double space) {
        this.typesetter = typesetter;
        this.places = places;
        this.setter = new InlineSetter(typesetter, places);
        this.breaker = new LineBreaker(typesetter);
        this.x = x;
        this.width = width;
        this.space = space;
    }

    /** A chapter behind a rule starts a new page, and the page's edge stands for the rule. */
    private static boolean startsPage(Heading heading) {
        return heading.getLevel() == 1 && heading.getPrevious() instanceof ThematicBreak;
    }

    /** The slabs of a block with all that is in it. */
    List<Slab> layOut(Node block) {
        slabs.clear();
        block.accept(this);
        return List.copyOf(slabs);
    }

    @Override
    public void visit(Paragraph paragraph) {
        slabs.addAll(Paragraphs.slabs(
                breaker.lines(setter.pieces(paragraph, Style.BODY, Line.DIMENSION), width), x, LEADING, space));
    }

    @Override
    public void visit(Heading heading) {
        HeadingLook look = HeadingLook.of(heading.getLevel());
        List<Piece> pieces = new ArrayList<>(setter.pieces(heading, look.style(), Line.NONE));
        if (pieces.size() > 2 && isSectionNumber(pieces.get(0))) {
            pieces.add(1, pieces.get(1)); // a wider space behind the number
        }
        double before = startsPage(heading) ? NEW_PAGE : look.before();
        List<Slab> lines = Paragraphs.slabs(breaker.lines(pieces, width), x, look.leading(), before);
        double height = lines.get(0).height()
                + lines.stream()
                        .skip(1)
                        .mapToDouble(slab -> slab.before() + slab.height())
                        .sum();
        Canvas.Outlined outlined = outlined(heading, new Area(x, OUTLINED_ABOVE, width, height));
        for (int i = 0; i < lines.size(); i++) {
            Slab line = lines.get(i).keepingNext();
            slabs.add(i > 0 ? line : line.over((canvas, top) -> canvas.outline(outlined, top - OUTLINED_ABOVE)));
        }
    }

    @Override
    public void visit(BlockQuote quote) {
        List<Slab> inner = inside(quote, x + FRAME + 2, width - 2 * FRAME - 4, SPACE);
        for (int i = 0; i < inner.size(); i++) {
            boolean first = i == 0;
            boolean last = i == inner.size() - 1;
            Slab slab = inner.get(i).padded(first ? FRAME - 1 : inner.get(i).before(), last ? FRAME : 0);
            double height = slab.height();
            double right = x + width;
            slabs.add(slab.withBefore(first ? space + 4 : 0).over((canvas, top) -> {
                canvas.line(x, top, x, top + height, 0.75, Paper.EDGE);
                canvas.line(right, top, right, top + height, 0.75, Paper.EDGE);
                if (first) {
                    canvas.line(x, top, right, top, 0.75, Paper.EDGE);
                }
                if (last) {
                    canvas.line(x, top + height, right, top + height, 0.75, Paper.EDGE);
                }
            }));
        }
        addGap(4);
    }

    @Override
    public void visit(BulletList list) {
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            item(item, "–", item == list.getFirstChild());
        }
    }

    @Override
    public void visit(OrderedList list) {
        int number = list.getMarkerStartNumber() == null ? 1 : list.getMarkerStartNumber();
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            item(item, number++ + ".", item == list.getFirstChild());
        }
    }

    private void item(Node item, String marker, boolean first) {
        Run run = typesetter.run(marker, Style.BODY.in(Paper.MUTED).in(Style.Digits.TABULAR));
        double indent = Math.max(INDENT, run.width() + 4);
        List<Slab> inner = inside(item, x + indent, width - indent, 2);
        if (inner.isEmpty()) {
            inner = List.of(Slab.of(2, LEADING, List.of(), (canvas, top) -> {}));
        }
        Slab start = inner.get(0)
                .withBefore(first ? space : 2)
                .over((canvas, top) -> canvas.text(run, x, top + LEADING * Paragraphs.ABOVE_BASELINE));
        slabs.add(start);
        slabs.addAll(inner.subList(1, inner.size()));
    }

    @Override
    public void visit(FencedCodeBlock code) {
        code(code.getLiteral());
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        code(code.getLiteral());
    }

    private void code(String literal) {
        Style style = Style.TABLE.in(Face.MONO).in(Style.Digits.PROPORTIONAL);
        List<Slab> lines = new ArrayList<>();
        double before = space + 3;
        for (String text : literal.stripTrailing().split("\n", -1)) {
            List<Piece> pieces = new ArrayList<>();
            typesetter.set(text.replace("\t", "    "), style).forEach(run -> pieces.add(new Piece.Word(run)));
            for (groupwright.documents.pages.Line line : breaker.lines(pieces, width - 8)) {
                lines.add(Paragraphs.slab(line, x + 8, 11.5, before)
                        .over((canvas, top) -> canvas.line(x + 0.4, top, x + 0.4, top + 11.5, 0.75, Paper.EDGE)));
                before = 0;
            }
        }
        slabs.addAll(lines);
        addGap(3);
    }

    @Override
    public void visit(ThematicBreak rule) {
        if (rule.getNext() instanceof Heading heading && startsPage(heading)) {
            return;
        }
        slabs.add(Slab.of(
                space, 6, List.of(), (canvas, top) -> canvas.line(x, top + 3, x + width, top + 3, 0.75, Paper.EDGE)));
    }

    @Override
    public void visit(CustomBlock block) {
        if (block instanceof TableBlock table) {
            slabs.addAll(tableLayout().layOut(table));
            addGap(6);
        } else if (block instanceof Caption caption) {
            caption(caption);
        } else if (block instanceof ChartBlock chart) {
            chart(chart.chart());
        } else {
            visitChildren(block);
        }
    }

    /** A table in the text column itself may go on over the trace column. */
    private TableLayout tableLayout() {
        double widest = width == PageGeometry.TEXT_WIDTH ? PageGeometry.FULL_WIDTH : width;
        return new TableLayout(
                setter, breaker, x, width, widest, typesetter.geometry().bodyHeight());
    }

    private void caption(Caption caption) {
        List<Piece> pieces = new ArrayList<>(setter.pieces(
                caption.number() + " ", Style.CAPTION.in(Paper.INK).in(Face.SEMIBOLD)));
        pieces.add(new Piece.Space(typesetter.run(" ", Style.CAPTION)));
        pieces.addAll(setter.pieces(caption, Style.CAPTION, Line.NONE));
        Paragraphs.slabs(breaker.lines(pieces, width), x, 11, 11).forEach(slab -> slabs.add(slab.keepingNext()));
    }

    private void chart(Chart chart) {
        ChartSize size = chart.size(new ChartWidths(typesetter), width / POINTS_PER_PIXEL);
        double tallest = TALLEST_CHART * typesetter.geometry().bodyHeight();
        double scale = Math.min(width / size.width(), Math.min(POINTS_PER_PIXEL, tallest / size.height()));
        slabs.add(Slab.of(
                6,
                size.height() * scale,
                List.of(),
                (canvas, top) -> canvas.chart(chart, size, typesetter, x, top, scale)));
        addGap(8);
    }

    private List<Slab> inside(Node container, double innerX, double innerWidth, double firstSpace) {
        BlockLayout inner = new BlockLayout(
                typesetter,
                places,
                Math.min(innerX, PageGeometry.LEFT + PageGeometry.TEXT_WIDTH - NARROWEST),
                Math.max(innerWidth, NARROWEST),
                firstSpace);
        inner.visitChildren(container);
        return inner.slabs;
    }

    private void addGap(double height) {
        slabs.add(Slab.of(height, 0, List.of(), (canvas, top) -> {}));
    }

    private static boolean isSectionNumber(Piece piece) {
        return piece instanceof Piece.Word word && word.run().text().matches("\\d+(\\.\\d+)*\\.?");
    }

    private static Canvas.Outlined outlined(Heading heading, Area room) {
        Optional<Integer> line = heading.getSourceSpans().stream()
                .map(span -> span.getLineIndex() + 1)
                .findFirst();
        return new Canvas.Outlined(heading.getLevel(), plainText(heading), line, room);
    }

    private static String plainText(Heading heading) {
        StringBuilder words = new StringBuilder();
        heading.accept(new AbstractVisitor() {
            @Override
            public void visit(Text text) {
                words.append(text.getLiteral());
            }

            @Override
            public void visit(Code code) {
                words.append(code.getLiteral());
            }

            @Override
            public void visit(CustomNode node) {
                if (node instanceof LiveNumber number) {
                    words.append(number.shown().text());
                }
            }
        });
        return words.toString();
    }
}
