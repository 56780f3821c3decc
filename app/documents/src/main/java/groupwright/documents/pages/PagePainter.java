package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Issue;
import java.util.List;

/** Draws pages: running head, text, margin notes, foot. */
final class PagePainter {
    private static final Style HEAD = Style.CAPTION;
    private static final Style FOOT = Style.CAPTION.ofSize(7.25);

    private final Issue issue;
    private final Labels labels;
    private final Typesetter typesetter;
    private final PageGeometry geometry;

    PagePainter(Issue issue, Labels labels, Typesetter typesetter) {
        this.issue = issue;
        this.labels = labels;
        this.typesetter = typesetter;
        this.geometry = typesetter.geometry();
    }

    void paint(Canvas canvas, Page page, List<Page.Placed> notes, int number, int of) {
        head(canvas);
        page.slabs().forEach(placed -> placed.slab().painting().paint(canvas, placed.top()));
        notes.forEach(placed -> placed.slab().painting().paint(canvas, placed.top()));
        foot(canvas, number, of);
    }

    private void head(Canvas canvas) {
        double x = PageGeometry.LEFT;
        x = text(canvas, issue.project(), HEAD.strong().in(Paper.INK), x, PageGeometry.HEAD_BASELINE);
        text(canvas, issue.title(), HEAD, x + (issue.project().isEmpty() ? 0 : 7), PageGeometry.HEAD_BASELINE);
        textAtRight(canvas, issue.state(), HEAD, PageGeometry.HEAD_BASELINE);
        canvas.line(
                PageGeometry.LEFT,
                PageGeometry.HEAD_RULE,
                PageGeometry.RIGHT,
                PageGeometry.HEAD_RULE,
                0.75,
                Paper.EDGE);
    }

    private void foot(Canvas canvas, int number, int of) {
        canvas.line(PageGeometry.LEFT, geometry.footRule(), PageGeometry.RIGHT, geometry.footRule(), 0.75, Paper.EDGE);
        text(canvas, issue.company(), FOOT, PageGeometry.LEFT, geometry.footBaseline());
        text(
                canvas,
                labels.text("foot.marks", labels.text("trace.chapter")),
                FOOT,
                PageGeometry.LEFT,
                geometry.footBaseline() + 9.5);
        textAtRight(
                canvas,
                labels.text("foot.page", Integer.toString(number), Integer.toString(of)),
                FOOT.strong().in(Paper.INK),
                geometry.footBaseline());
    }

    private double text(Canvas canvas, String text, Style style, double x, double baseline) {
        List<Run> runs = typesetter.set(text, style);
        LinePainter.paintRuns(canvas, runs, x, baseline);
        return x + runs.stream().mapToDouble(Run::width).sum();
    }

    private void textAtRight(Canvas canvas, String text, Style style, double baseline) {
        List<Run> runs = typesetter.set(text, style);
        double width = runs.stream().mapToDouble(Run::width).sum();
        LinePainter.paintRuns(canvas, runs, PageGeometry.RIGHT - width, baseline);
    }
}
