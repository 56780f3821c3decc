package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceInput;
import groupwright.documents.trace.Use;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Lays out the entries of the last chapter, in their order and over the whole page, since no notes stand beside them.
 * Neighbours of one figure stand under its name, formula and source, which are written once; where the figure comes
 * again further on, a link leads back to them. For one document, from its first entry to its last.
 */
final class EntryLayout {
    private static final int MOST_KEPT_LINES = 8;
    private static final double TITLE_LEADING = 11.5;
    private static final double LEADING = 9.6;
    private static final double NUMBER_ROOM = 24;
    private static final double TEXT_LEFT = PageGeometry.LEFT + NUMBER_ROOM;
    private static final double TEXT_ROOM = PageGeometry.FULL_WIDTH - NUMBER_ROOM;
    private static final Style TITLE = Style.BODY.ofSize(8.25);
    private static final Style TEXT = Style.NOTE.ofSize(7.25).in(Paper.INK);
    private static final Style LABEL = TEXT.in(Paper.MUTED);
    private static final Style ADDRESS = LABEL.in(Face.MONO).ofSize(6.6);
    private static final Style FIGURE = Style.BODY.ofSize(9).strong();

    private final Labels labels;
    private final Trace trace;
    private final UsePlaces places;
    private final Typesetter typesetter;
    private final InlineSetter setter;
    private final LineBreaker breaker;
    private final Map<Shared, Integer> firstOf = new HashMap<>(); // looked up only
    private Shared current = new Shared("", "", 0, "", "");

    /** What entries of a figure have in common. */
    private record Shared(String figure, String formula, int version, String source, String leavesOut) {
        static Shared of(TraceEntry entry) {
            return new Shared(
                    entry.figure(), entry.formula(), entry.formulaVersion(), entry.source(), entry.leavesOut());
        }
    }

    EntryLayout(Labels labels, Trace trace, UsePlaces places, Typesetter typesetter) {
        this.labels = labels;
        this.trace = trace;
        this.places = places;
        this.typesetter = typesetter;
        this.setter = new InlineSetter(typesetter, places);
        this.breaker = new LineBreaker(typesetter);
    }

    /** The slabs of the next entry, under its figure's where that is another than before. */
    List<Slab> layOut(NumberedEntry numbered) {
        Shared shared = Shared.of(numbered.entry());
        List<Slab> slabs = new ArrayList<>();
        if (!shared.equals(current)) {
            figure(shared, numbered.number()).forEach(slab -> slabs.add(slab.keepingNext()));
        }
        List<Slab> entry = new ArrayList<>();
        entry.add(title(numbered).keepingNext());
        entry.addAll(Paragraphs.slabs(breaker.lines(details(numbered), TEXT_ROOM), TEXT_LEFT, LEADING, 0));
        if (shared.equals(current)) {
            entry.set(0, entry.get(0).under(continued(shared)));
        }
        slabs.addAll(entry.size() <= MOST_KEPT_LINES ? Paragraphs.kept(entry) : entry);
        current = shared;
        return slabs;
    }

    private List<Slab> figure(Shared shared, int number) {
        List<Slab> slabs = new ArrayList<>(
                Paragraphs.slabs(breaker.lines(setter.pieces(shared.figure(), FIGURE), TEXT_ROOM), TEXT_LEFT, 13, 9));
        slabs.set(
                0,
                slabs.get(0)
                        .over((canvas, top) ->
                                canvas.line(PageGeometry.LEFT, top - 3, PageGeometry.RIGHT, top - 3, 0.5, Paper.EDGE)));
        slabs.addAll(Paragraphs.slabs(breaker.lines(stated(shared, number), TEXT_ROOM), TEXT_LEFT, LEADING, 0));
        return slabs;
    }

    /** Formula and source, or where they stand. */
    private List<Piece> stated(Shared shared, int number) {
        Integer before = firstOf.putIfAbsent(shared, number);
        List<Piece> pieces = new ArrayList<>();
        if (before != null) {
            pieces.addAll(setter.pieces(labels.text("trace.asAt") + " ", LABEL));
            pieces.add(linked(Integer.toString(before), Use.entryAnchor(before)));
            return pieces;
        }
        if (!shared.formula().isBlank()) {
            String version = labels.text("trace.versionNumber", Integer.toString(shared.version()));
            part(pieces, "trace.formula", setter.pieces(shared.formula(), TEXT));
            pieces.addAll(setter.pieces(" (" + version + ")", LABEL));
        }
        part(pieces, "trace.source", setter.pieces(shared.source(), TEXT));
        part(pieces, "trace.leavesOut", setter.pieces(shared.leavesOut(), TEXT));
        return pieces;
    }

    private Slab continued(Shared shared) {
        Line line =
                breaker.lines(setter.pieces(shared.figure(), FIGURE), TEXT_ROOM).get(0);
        return Paragraphs.slab(line, TEXT_LEFT, 15, 0);
    }

    private Slab title(NumberedEntry numbered) {
        TraceEntry entry = numbered.entry();
        List<Piece> pieces = new ArrayList<>();
        if (!entry.subject().isBlank()) {
            pieces.addAll(setter.pieces(entry.subject() + "  ", TITLE.strong()));
        }
        pieces.addAll(setter.pieces(entry.shown().text(), TITLE.strong().in(Style.Digits.TABULAR)));
        if (!entry.band().isBlank()) {
            pieces.addAll(setter.pieces("  " + entry.band(), TITLE.in(Paper.MUTED)));
        }
        pieces.addAll(setter.pieces("   " + entry.id(), ADDRESS));
        List<Line> lines = breaker.lines(pieces, TEXT_ROOM);
        List<Run> number = typesetter.set(
                Integer.toString(numbered.number()), TITLE.strong().in(Style.Digits.TABULAR));
        double baseline = TITLE_LEADING * Paragraphs.ABOVE_BASELINE;
        return Slab.of(3.5, lines.size() * TITLE_LEADING, List.of(), (canvas, top) -> {
            canvas.anchor(numbered.anchor(), PageGeometry.LEFT, top - 6);
            LinePainter.paintRuns(canvas, number, PageGeometry.LEFT, top + baseline);
            for (int i = 0; i < lines.size(); i++) {
                double y = top + i * TITLE_LEADING;
                LinePainter.paint(canvas, lines.get(i), TEXT_LEFT, y + baseline, y, y + TITLE_LEADING);
            }
        });
    }

    private List<Piece> details(NumberedEntry numbered) {
        TraceEntry entry = numbered.entry();
        List<Piece> pieces = new ArrayList<>();
        part(pieces, "trace.inputs", inputs(entry.inputs()));
        part(pieces, "trace.uses", restsOn(numbered));
        String requirements = String.join(labels.text("list.separator"), entry.requirements());
        part(pieces, "trace.requirements", setter.pieces(requirements, TEXT));
        part(pieces, numbered.places() == 0 ? "trace.shownAt" : "trace.shownOnPages", pages(numbered));
        return pieces;
    }

    /** Adds a muted label and what belongs to it, unless that is nothing. */
    private void part(List<Piece> pieces, String labelKey, List<Piece> content) {
        if (content.isEmpty()) {
            return;
        }
        if (!pieces.isEmpty()) {
            pieces.addAll(setter.pieces("   ", TEXT));
        }
        pieces.addAll(setter.pieces(labels.text(labelKey) + " ", LABEL));
        pieces.addAll(content);
    }

    private List<Piece> inputs(List<TraceInput> inputs) {
        List<Piece> pieces = new ArrayList<>();
        for (TraceInput input : inputs) {
            if (!pieces.isEmpty()) {
                pieces.addAll(setter.pieces("; ", TEXT));
            }
            pieces.addAll(setter.pieces(input.label() + " " + input.shown().text(), TEXT));
            if (!input.address().isEmpty()) {
                pieces.addAll(setter.pieces(" " + input.address(), ADDRESS));
            }
        }
        return pieces;
    }

    private List<Piece> restsOn(NumberedEntry numbered) {
        List<Piece> pieces = new ArrayList<>();
        for (int number : numbered.restsOn()) {
            TraceEntry entry = trace.entry(number).entry();
            if (!pieces.isEmpty()) {
                pieces.addAll(setter.pieces("; ", TEXT));
            }
            pieces.add(linked(Integer.toString(number), Use.entryAnchor(number)));
            pieces.addAll(
                    setter.pieces(" " + entry.title() + ", " + entry.shown().text(), TEXT));
        }
        return pieces;
    }

    private List<Piece> pages(NumberedEntry numbered) {
        return numbered.places() == 0
                ? setter.pieces(labels.text("trace.onlyThroughOthers"), TEXT)
                : setter.pages(List.of(numbered.number()), TEXT, labels.text("list.separator"));
    }

    private Piece linked(String text, String anchor) {
        return new Piece.Linked(typesetter.set(text, TEXT.in(Paper.ACCENT)), anchor);
    }
}
