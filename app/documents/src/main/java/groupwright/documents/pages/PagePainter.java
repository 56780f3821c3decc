package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.tree.Issue;
import java.util.List;

/** Draws pages: running head, text, margin notes, foot. */
final class PagePainter {
    private static final Style HEAD = Style.CAPTION;
    private static final Style FOOT = Style.CAPTION.ofSize(7.25);
    private static final int SHOWN_HASH = 12;
    private static final double FRAME = 4;

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
        state(canvas);
        canvas.line(
                PageGeometry.LEFT,
                PageGeometry.HEAD_RULE,
                PageGeometry.RIGHT,
                PageGeometry.HEAD_RULE,
                0.75,
                Paper.EDGE);
    }

    /** A draft says so in ink and in a frame, with the content it was made from: that survives a grey copy. */
    private void state(Canvas canvas) {
        if (!isDraft()) {
            textAtRight(canvas, issue.state(), HEAD, PageGeometry.HEAD_BASELINE);
            return;
        }
        List<Run> hash = typesetter.set(shortHash(), HEAD.ofSize(7));
        List<Run> state = typesetter.set(issue.state(), HEAD.strong().in(Paper.INK));
        double left = PageGeometry.RIGHT - FRAME - width(hash);
        double frame = left - 7 - FRAME - width(state);
        canvas.strokeBox(
                frame - FRAME, PageGeometry.HEAD_BASELINE - 9.2, width(state) + 2 * FRAME, 12.4, 0.9, Paper.INK);
        LinePainter.paintRuns(canvas, state, frame, PageGeometry.HEAD_BASELINE);
        LinePainter.paintRuns(canvas, hash, PageGeometry.RIGHT - width(hash), PageGeometry.HEAD_BASELINE);
    }

    /** A state that begins with the word for a draft, whatever follows. */
    private boolean isDraft() {
        String word = labels.text("document.draft").toLowerCase(issue.locale());
        return issue.state().toLowerCase(issue.locale()).startsWith(word);
    }

    private String shortHash() {
        return issue.contentHash()
                .substring(0, Math.min(SHOWN_HASH, issue.contentHash().length()));
    }

    private static double width(List<Run> runs) {
        return runs.stream().mapToDouble(Run::width).sum();
    }

    private void foot(Canvas canvas, int number, int of) {
        canvas.line(PageGeometry.LEFT, geometry.footRule(), PageGeometry.RIGHT, geometry.footRule(), 0.75, Paper.EDGE);
        double x = text(canvas, issue.company(), FOOT, PageGeometry.LEFT, geometry.footBaseline());
        if (isDraft()) {
            String words = labels.text("foot.draft", issue.shownDate());
            text(canvas, words, FOOT.in(Paper.INK), x + (x > PageGeometry.LEFT ? 10 : 0), geometry.footBaseline());
        }
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
        return x + width(runs);
    }

    private void textAtRight(Canvas canvas, String text, Style style, double baseline) {
        List<Run> runs = typesetter.set(text, style);
        LinePainter.paintRuns(canvas, runs, PageGeometry.RIGHT - width(runs), baseline);
    }
}
