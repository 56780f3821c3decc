package groupwright.documents.pages;

import groupwright.documents.trace.Trace;
import groupwright.documents.trace.Use;
import groupwright.documents.tree.DocumentTree;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A document on the pages its PDF has, to be painted on a screen: same breaks, same places, same glyphs. It never changes
 * and asks nobody; several threads may paint it. Pages count from 0, lengths are points from a page's upper left corner.
 */
public final class PaintedDocument {
    private final FontShelf shelf;
    private final PageGeometry geometry;
    private final Trace trace;
    private final List<Recorder.Recorded> pages;
    private final PagePlaces places;
    private final List<String> warnings;

    private PaintedDocument(
            FontShelf shelf, PageGeometry geometry, Trace trace, List<Recorder.Recorded> pages, List<String> warnings) {
        this.shelf = shelf;
        this.geometry = geometry;
        this.trace = trace;
        this.pages = pages;
        this.places = PagePlaces.of(pages, trace);
        this.warnings = warnings;
    }

    /** Lays out a document for A4. Cost grows with its text; nothing is painted yet. */
    public static PaintedDocument of(DocumentTree document, FontShelf shelf) {
        return of(document, shelf, PaperSize.A4);
    }

    /** Lays out a document. Cost grows with its text; nothing is painted yet. */
    public static PaintedDocument of(DocumentTree document, FontShelf shelf, PaperSize paper) {
        LaidOut laidOut = LaidOut.of(document, shelf, paper);
        List<Recorder.Recorded> pages = new ArrayList<>();
        for (int i = 0; i < laidOut.pageCount(); i++) {
            Recorder recorder = new Recorder();
            laidOut.draw(recorder, i);
            pages.add(recorder.recorded());
        }
        return new PaintedDocument(shelf, laidOut.geometry(), document.trace(), List.copyOf(pages), laidOut.warnings());
    }

    public int pageCount() {
        return pages.size();
    }

    /** Width of every page. */
    public double pageWidth() {
        return geometry.width();
    }

    /** Height of every page. */
    public double pageHeight() {
        return geometry.height();
    }

    /** Paints a page without marking numbers. */
    public void paint(Graphics2D target, int page) {
        paint(target, page, Set.of());
    }

    /**
     * Paints a page on what lies under it, which should be white. One unit of the graphics is a point: scale it by
     * 96/72 for a screen of 96 pixels an inch. Cost grows with the text of that page only.
     *
     * @param page from 0
     * @param changed numbers to mark as changed, see {@link #changedSince}
     */
    public void paint(Graphics2D target, int page, Set<Use> changed) {
        Recorder.Recorded recorded = pages.get(page);
        Graphics2D graphics = (Graphics2D) target.create();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        Canvas canvas = new ScreenCanvas(graphics, shelf, changed);
        recorded.strokes().forEach(stroke -> stroke.on(canvas));
        graphics.dispose();
    }

    /** All headings, in order. */
    public List<OutlineEntry> outline() {
        return places.outline();
    }

    /** The live numbers of a page, in reading order. */
    public List<PaintedNumber> numbersOn(int page) {
        return places.numbers().get(page);
    }

    /** The headings of a page, from top to bottom. */
    public List<PaintedHeading> headingsOn(int page) {
        return places.headings().get(page);
    }

    /** The links of a page: from numbers and margin notes to the last chapter, and from there back. */
    public List<PageLink> linksOn(int page) {
        return places.links().get(page);
    }

    /** Where the numbers come from. */
    public Trace trace() {
        return trace;
    }

    /** One sentence each on what could not be shown as written; the same as those of the PDF. */
    public List<String> warnings() {
        return warnings;
    }

    /**
     * The places whose number reads otherwise than in an earlier state of the document, or answers a question it did not
     * ask; see {@link Trace#changedSince}.
     */
    public Set<Use> changedSince(PaintedDocument earlier) {
        Set<Use> uses = new LinkedHashSet<>();
        trace.changedSince(earlier.trace)
                .forEach(number -> uses.addAll(trace.entry(number).uses()));
        return Collections.unmodifiableSet(uses);
    }
}
