package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.trace.Trace;
import groupwright.documents.tree.Issue;
import java.util.ArrayList;
import java.util.List;

/** Lays out the title block. */
final class TitleLayout {
    private static final double LABEL_ROOM = 68;
    private static final double LABEL_GAP = 10;
    private static final double LEADING = 12;
    private static final Style LABEL = Style.CAPTION.ofSize(8.25);

    private final Labels labels;
    private final Typesetter typesetter;

    TitleLayout(Labels labels, Typesetter typesetter) {
        this.labels = labels;
        this.typesetter = typesetter;
    }

    List<Slab> layOut(Issue issue) {
        InlineSetter setter = new InlineSetter(typesetter, UsePlaces.none(new Trace(List.of())));
        LineBreaker breaker = new LineBreaker(typesetter);
        List<Slab> slabs = new ArrayList<>();
        List<Piece> title = setter.pieces(issue.title(), Style.BODY.strong().ofSize(22));
        slabs.addAll(Paragraphs.slabs(breaker.lines(title, PageGeometry.TEXT_WIDTH), PageGeometry.LEFT, 30, 0));
        slabs.add(gap(7));
        double labelRoom = issue.facts(labels).stream()
                .mapToDouble(fact -> typesetter.set(fact.label(), LABEL).stream()
                                .mapToDouble(Run::width)
                                .sum()
                        + LABEL_GAP)
                .reduce(LABEL_ROOM, Math::max);
        for (Issue.Fact fact : issue.facts(labels)) {
            List<Piece> value = setter.pieces(fact.value(), LABEL.in(Paper.INK));
            double x = PageGeometry.LEFT + labelRoom;
            List<Slab> lines = new ArrayList<>(
                    Paragraphs.slabs(breaker.lines(value, PageGeometry.TEXT_WIDTH - labelRoom), x, LEADING, 0));
            List<Run> label = typesetter.set(fact.label(), LABEL);
            lines.set(
                    0,
                    lines.get(0)
                            .over((canvas, top) -> LinePainter.paintRuns(
                                    canvas, label, PageGeometry.LEFT, top + LEADING * Paragraphs.ABOVE_BASELINE)));
            slabs.addAll(lines);
        }
        slabs.add(gap(6));
        return Paragraphs.kept(slabs);
    }

    private static Slab gap(double height) {
        return Slab.of(height, 0, List.of(), (canvas, top) -> {});
    }
}
