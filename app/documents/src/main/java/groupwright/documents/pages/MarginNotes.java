package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.Use;
import java.util.ArrayList;
import java.util.List;

/** The column beside the text that names the numbers on a page. */
final class MarginNotes {
    private static final double LEADING = 9.2;
    private static final double GAP = 3.2;
    private static final double INDENT = 15;
    private static final int MOST_DETAIL_LINES = 2;
    private static final Style DETAIL = Style.NOTE;
    private static final Style STRONG = Style.NOTE.strong().in(Paper.INK);

    private final Trace trace;
    private final Labels labels;
    private final PageGeometry geometry;
    private final InlineSetter setter;
    private final LineBreaker breaker;

    MarginNotes(Trace trace, Labels labels, Typesetter typesetter) {
        this.trace = trace;
        this.labels = labels;
        this.geometry = typesetter.geometry();
        this.setter = new InlineSetter(typesetter, UsePlaces.none(trace));
        this.breaker = new LineBreaker(typesetter);
    }

    /**
     * Slabs for a page: each level with its number, pushed down where they would overlap each other or what reaches over
     * the column. Those for which no room is left are counted.
     */
    List<Page.Placed> beside(Page page) {
        List<NotedNumbers> all = NotedNumbers.on(page, trace);
        List<Page.Placed> placed = new ArrayList<>();
        double free = PageGeometry.BODY_TOP;
        for (int i = 0; i < all.size(); i++) {
            Slab note = note(all.get(i));
            double wanted = Math.max(free, all.get(i).baseline() - LEADING * Paragraphs.ABOVE_BASELINE);
            double top = clear(page, wanted, note.height());
            double reserve = i == all.size() - 1 ? 0 : GAP + LEADING;
            if (top + note.height() + reserve > geometry.bodyBottom() + 0.01) {
                int left = all.subList(i, all.size()).stream()
                        .mapToInt(NotedNumbers::count)
                        .sum();
                double rest = clear(page, free, LEADING);
                if (rest + LEADING <= geometry.bodyBottom() + 0.01) {
                    placed.add(new Page.Placed(more(left), rest));
                }
                return placed;
            }
            placed.add(new Page.Placed(note, top));
            free = top + note.height() + GAP;
        }
        return placed;
    }

    /** The first height from {@code top} on at which nothing reaches over the column. */
    private static double clear(Page page, double top, double height) {
        double y = top;
        for (Page.Placed placed : page.slabs()) {
            double bottom = placed.top() + placed.slab().height();
            if (placed.slab().reach() == Slab.Reach.PAGE && placed.top() < y + height && bottom > y) {
                y = bottom + GAP;
            }
        }
        return y;
    }

    private Slab note(NotedNumbers numbers) {
        Line mark = new Line(setter.pieces(numbers.label(), STRONG));
        double indent = Math.max(INDENT, mark.width() + 5);
        List<Line> lines = lines(numbers, PageGeometry.TRACE_WIDTH - indent);
        double height = lines.size() * LEADING;
        return Slab.of(0, height, List.of(), (canvas, top) -> {
            double baseline = top + LEADING * Paragraphs.ABOVE_BASELINE;
            LinePainter.paint(canvas, mark, PageGeometry.TRACE_LEFT, baseline, top, top + LEADING);
            for (Line line : lines) {
                LinePainter.paint(canvas, line, PageGeometry.TRACE_LEFT + indent, baseline, top, top + LEADING);
                baseline += LEADING;
            }
            canvas.link(
                    Use.entryAnchor(numbers.first()), PageGeometry.TRACE_LEFT, top, PageGeometry.RIGHT, top + height);
        });
    }

    /** The figure's name, then what it is asked of where that is short, then who asks for it or how it is found. */
    private List<Line> lines(NotedNumbers numbers, double width) {
        TraceEntry entry = trace.entry(numbers.first()).entry();
        List<Line> title = breaker.lines(setter.pieces(entry.title(), STRONG), width);
        String detail = entry.requirements().isEmpty()
                ? entry.formula()
                : String.join(labels.text("list.separator"), entry.requirements());
        if (numbers.count() > 1) {
            title = breaker.lines(setter.pieces(entry.figure(), STRONG), width);
            detail = entry.formula();
        } else if (title.size() > 1) {
            title = breaker.lines(setter.pieces(entry.figure(), STRONG), width);
            detail = entry.subject() + (detail.isBlank() ? "" : "; " + detail);
        }
        List<Line> lines = new ArrayList<>(title);
        if (!detail.isBlank()) {
            List<Line> details = breaker.lines(setter.pieces(detail, DETAIL), width);
            lines.addAll(details.subList(0, Math.min(MOST_DETAIL_LINES, details.size())));
            if (details.size() > MOST_DETAIL_LINES) {
                lines.set(lines.size() - 1, cutShort(lines.get(lines.size() - 1)));
            }
        }
        return lines;
    }

    /** Says that a text goes on. */
    private Line cutShort(Line last) {
        List<Piece> pieces = new ArrayList<>(last.pieces());
        pieces.addAll(setter.pieces("…", DETAIL));
        return new Line(pieces);
    }

    private Slab more(int count) {
        List<Piece> pieces = setter.pieces(labels.text("trace.more", Integer.toString(count)), DETAIL);
        Line line = breaker.lines(pieces, PageGeometry.TRACE_WIDTH).get(0);
        return Paragraphs.slab(line, PageGeometry.TRACE_LEFT, LEADING, 0);
    }
}
