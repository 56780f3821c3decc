package groupwright.documents.pages;

import groupwright.documents.labels.Labels;
import groupwright.documents.trace.NumberedEntry;
import groupwright.documents.trace.Trace;
import groupwright.documents.trace.TraceEntry;
import groupwright.documents.trace.TraceInput;
import groupwright.documents.trace.Use;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Lays out the entries of the last chapter. */
final class EntryLayout {
    private static final int MOST_INPUT_LINES = 10;
    private static final double LEADING = 11;
    private static final double NUMBER_ROOM = 24;
    private static final double LABEL_ROOM = 74;
    private static final double TEXT_LEFT = PageGeometry.LEFT + NUMBER_ROOM + LABEL_ROOM;
    private static final double TEXT_ROOM = PageGeometry.TEXT_WIDTH - NUMBER_ROOM - LABEL_ROOM;
    private static final Style TEXT = Style.CAPTION.in(Paper.INK);
    private static final Style LABEL = Style.CAPTION;
    private static final Style ADDRESS = Style.CAPTION.in(Face.MONO).ofSize(7.25);

    private final Labels labels;
    private final Trace trace;
    private final Map<Use, Integer> pageOf;
    private final Typesetter typesetter;
    private final InlineSetter setter;
    private final LineBreaker breaker;

    /**
     * @param pageOf page, from 1, of every place where a number stands
     */
    EntryLayout(Labels labels, Trace trace, Map<Use, Integer> pageOf, Typesetter typesetter) {
        this.labels = labels;
        this.trace = trace;
        this.pageOf = pageOf;
        this.typesetter = typesetter;
        this.setter = new InlineSetter(typesetter);
        this.breaker = new LineBreaker(typesetter);
    }

    /** The slabs of an entry, kept on one page where it fits. */
    List<Slab> layOut(NumberedEntry numbered) {
        TraceEntry entry = numbered.entry();
        List<Slab> slabs = new ArrayList<>(title(numbered));
        row(slabs, "trace.figure", setter.pieces(entry.id(), ADDRESS.in(Paper.INK)));
        row(slabs, "trace.formula", formula(entry));
        inputs(slabs, entry.inputs());
        row(slabs, "trace.uses", restsOn(numbered));
        row(slabs, "trace.band", setter.pieces(entry.band(), TEXT));
        row(slabs, "trace.source", setter.pieces(entry.source(), TEXT));
        row(slabs, "trace.leavesOut", setter.pieces(entry.leavesOut(), TEXT));
        row(
                slabs,
                "trace.requirements",
                setter.pieces(String.join(labels.text("list.separator"), entry.requirements()), TEXT));
        row(slabs, numbered.places() == 0 ? "trace.shownAt" : "trace.shownOnPages", pages(numbered));
        return Paragraphs.kept(slabs);
    }

    private List<Slab> title(NumberedEntry numbered) {
        Style strong = Style.BODY.ofSize(8.75).strong();
        List<Piece> value = setter.pieces(numbered.entry().shown().text(), strong.in(Style.Digits.TABULAR));
        Line valueLine = new Line(value);
        double room = PageGeometry.TEXT_WIDTH - NUMBER_ROOM - Math.min(valueLine.width() + 12, 140);
        List<Line> title = breaker.lines(setter.pieces(numbered.entry().title(), strong), room);
        List<Slab> slabs = new ArrayList<>(Paragraphs.slabs(title, PageGeometry.LEFT + NUMBER_ROOM, 13, 9));
        List<Run> number = typesetter.set(Integer.toString(numbered.number()), strong.in(Style.Digits.TABULAR));
        slabs.set(0, slabs.get(0).over((canvas, top) -> {
            double baseline = top + 13 * Paragraphs.ABOVE_BASELINE;
            double right = PageGeometry.LEFT + PageGeometry.TEXT_WIDTH;
            canvas.anchor(numbered.anchor(), PageGeometry.LEFT, top - 6);
            canvas.line(PageGeometry.LEFT, top - 3, right, top - 3, 0.5, Paper.HAIRLINE);
            LinePainter.paintRuns(canvas, number, PageGeometry.LEFT, baseline);
            LinePainter.paint(canvas, valueLine, right - valueLine.width(), baseline, top, top + 13);
        }));
        return slabs;
    }

    private void row(List<Slab> slabs, String labelKey, List<Piece> pieces) {
        if (pieces.isEmpty()) {
            return;
        }
        List<Slab> lines = new ArrayList<>(Paragraphs.slabs(breaker.lines(pieces, TEXT_ROOM), TEXT_LEFT, LEADING, 0));
        if (!labelKey.isEmpty()) {
            List<Run> label = typesetter.set(labels.text(labelKey), LABEL);
            lines.set(
                    0,
                    lines.get(0)
                            .over((canvas, top) -> LinePainter.paintRuns(
                                    canvas,
                                    label,
                                    PageGeometry.LEFT + NUMBER_ROOM,
                                    top + LEADING * Paragraphs.ABOVE_BASELINE)));
        }
        slabs.addAll(lines);
    }

    private List<Piece> formula(TraceEntry entry) {
        if (entry.formula().isBlank()) {
            return List.of();
        }
        List<Piece> pieces = new ArrayList<>(setter.pieces(entry.formula() + "  ", TEXT));
        String version = labels.text("trace.versionNumber", Integer.toString(entry.formulaVersion()));
        pieces.addAll(setter.pieces(version, LABEL));
        return pieces;
    }

    /** A line for each input; where there are many they follow each other, so that no entry fills pages. */
    private void inputs(List<Slab> slabs, List<TraceInput> inputs) {
        if (inputs.size() <= MOST_INPUT_LINES) {
            String label = "trace.inputs";
            for (TraceInput input : inputs) {
                row(slabs, label, input(input));
                label = "";
            }
            return;
        }
        List<Piece> pieces = new ArrayList<>();
        for (TraceInput input : inputs) {
            if (!pieces.isEmpty()) {
                pieces.addAll(setter.pieces("; ", TEXT));
            }
            pieces.addAll(input(input));
        }
        row(slabs, "trace.inputs", pieces);
    }

    private List<Piece> input(TraceInput input) {
        List<Piece> pieces = new ArrayList<>(setter.pieces(input.label() + ": ", TEXT));
        pieces.addAll(setter.pieces(input.shown().text(), TEXT));
        if (!input.address().isEmpty()) {
            pieces.addAll(setter.pieces("  " + input.address(), ADDRESS));
        }
        return pieces;
    }

    private List<Piece> restsOn(NumberedEntry numbered) {
        List<Piece> pieces = new ArrayList<>();
        for (int number : numbered.restsOn()) {
            TraceEntry entry = trace.entry(number).entry();
            if (!pieces.isEmpty()) {
                pieces.addAll(setter.pieces(labels.text("list.separator"), TEXT));
            }
            pieces.add(linked(Integer.toString(number), Use.entryAnchor(number)));
            pieces.addAll(
                    setter.pieces(" " + entry.title() + ", " + entry.shown().text(), TEXT));
        }
        return pieces;
    }

    private List<Piece> pages(NumberedEntry numbered) {
        if (numbered.places() == 0) {
            return setter.pieces(labels.text("trace.onlyThroughOthers"), TEXT);
        }
        Map<Integer, Use> firstOnPage = new LinkedHashMap<>();
        numbered.uses().forEach(use -> firstOnPage.putIfAbsent(pageOf.get(use), use));
        List<Piece> pieces = new ArrayList<>();
        firstOnPage.forEach((page, use) -> {
            if (!pieces.isEmpty()) {
                pieces.addAll(setter.pieces(labels.text("list.separator"), TEXT));
            }
            pieces.add(linked(Integer.toString(page), use.anchor()));
        });
        return pieces;
    }

    private Piece linked(String text, String anchor) {
        return new Piece.Linked(typesetter.set(text, TEXT.in(Paper.ACCENT)), anchor);
    }
}
