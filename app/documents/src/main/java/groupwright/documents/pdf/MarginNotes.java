package groupwright.documents.pdf;

import groupwright.documents.labels.Labels;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.Use;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The column beside the text that names the numbers on a page. */
final class MarginNotes {
    private static final double LEADING = 9.2;
    private static final double GAP = 3.2;
    private static final double INDENT = 17;
    private static final int MOST_DETAIL_LINES = 2;

    private final Trace trace;
    private final Labels labels;
    private final InlineSetter setter;
    private final LineBreaker breaker;

    MarginNotes(Trace trace, Labels labels, Typesetter typesetter) {
        this.trace = trace;
        this.labels = labels;
        this.setter = new InlineSetter(typesetter);
        this.breaker = new LineBreaker(typesetter);
    }

    /** Slabs for a page: each level with its number, pushed down where they would overlap. */
    List<Page.Placed> beside(Page page) {
        Map<Integer, Double> baselines = firstBaselines(page);
        List<Page.Placed> placed = new ArrayList<>();
        double free = PageGeometry.BODY_TOP;
        int done = 0;
        for (Map.Entry<Integer, Double> number : baselines.entrySet()) {
            Slab note = note(number.getKey());
            double top = Math.max(free, number.getValue() - LEADING * Paragraphs.ABOVE_BASELINE);
            boolean last = done == baselines.size() - 1;
            double reserve = last ? 0 : GAP + LEADING;
            if (top + note.height() + reserve > PageGeometry.BODY_BOTTOM) {
                placed.add(new Page.Placed(more(baselines.size() - done), Math.max(free, PageGeometry.BODY_TOP)));
                return placed;
            }
            placed.add(new Page.Placed(note, top));
            free = top + note.height() + GAP;
            done++;
        }
        return placed;
    }

    private static Map<Integer, Double> firstBaselines(Page page) {
        Map<Integer, Double> baselines = new LinkedHashMap<>();
        for (Page.Placed placed : page.slabs()) {
            for (Slab.Sighting sighting : placed.slab().sightings()) {
                baselines.putIfAbsent(sighting.use().entry(), placed.top() + sighting.baseline());
            }
        }
        return baselines;
    }

    private Slab note(int number) {
        TraceEntry entry = trace.entry(number).entry();
        double width = PageGeometry.TRACE_WIDTH - INDENT;
        Style strong = Style.NOTE.strong().in(Paper.INK);
        List<Line> lines = new ArrayList<>(breaker.lines(setter.pieces(entry.title(), strong), width));
        String detail = entry.requirements().isEmpty()
                ? entry.formula()
                : String.join(labels.text("list.separator"), entry.requirements());
        if (!detail.isBlank()) {
            List<Line> details = breaker.lines(setter.pieces(detail, Style.NOTE), width);
            lines.addAll(details.subList(0, Math.min(MOST_DETAIL_LINES, details.size())));
        }
        Line mark = breaker.lines(setter.pieces(Integer.toString(number), strong), INDENT)
                .get(0);
        double height = lines.size() * LEADING;
        return Slab.of(0, height, List.of(), (canvas, top) -> {
            double baseline = top + LEADING * Paragraphs.ABOVE_BASELINE;
            LinePainter.paint(canvas, mark, PageGeometry.TRACE_LEFT, baseline, top, top + LEADING);
            for (Line line : lines) {
                LinePainter.paint(canvas, line, PageGeometry.TRACE_LEFT + INDENT, baseline, top, top + LEADING);
                baseline += LEADING;
            }
            canvas.link(Use.entryAnchor(number), PageGeometry.TRACE_LEFT, top, PageGeometry.RIGHT, top + height);
        });
    }

    private Slab more(int count) {
        List<Piece> pieces = setter.pieces(labels.text("trace.more", Integer.toString(count)), Style.NOTE);
        Line line = breaker.lines(pieces, PageGeometry.TRACE_WIDTH).get(0);
        return Paragraphs.slab(line, PageGeometry.TRACE_LEFT, LEADING, 0);
    }
}
