package groupwright.workbench.components;

import groupwright.definition.assessment.Rung;
import groupwright.definition.record.Part;
import groupwright.documents.charts.ConceptSign;
import groupwright.documents.charts.StepBars;
import groupwright.documents.content.Band;
import groupwright.documents.content.Verdict;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.GridLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;

/** All our own components in all their states, in the look that is set. */
final class ComponentGallery {
    static final Locale WORDS = Locale.ENGLISH;
    static final int WIDTH = 820;
    static final int HEIGHT = 1600;

    private ComponentGallery() {}

    /** The gallery, laid out for its size. */
    static JPanel build() {
        JPanel all = new JPanel();
        all.setLayout(new BoxLayout(all, BoxLayout.PAGE_AXIS));
        all.setBackground(Token.SURFACE.colour());
        all.setBorder(BorderFactory.createEmptyBorder(
                Metric.GAP.px(), Metric.WIDE_GAP.px(), Metric.GAP.px(), Metric.WIDE_GAP.px()));
        add(all, "Figure chip", flow(chips()));
        add(all, "Verdicts", flow(verdicts()));
        add(all, "Criterion bar", bars());
        add(all, "Ladder mark", flow(ladders()));
        add(all, "Ladder", ladderDetail());
        add(all, "Concepts", flow(concepts()));
        add(all, "Chooser", flow(chooser()));
        add(all, "Basis, evidence", flow(basis()));
        add(all, "How well we know it", flow(bands()));
        add(all, "Facets", facets(0));
        add(all, "Links", flow(links()));
        add(all, "Field", flow(List.of(new JTextField("190 W", 8))));
        add(all, "Problem", problem());
        add(all, "Work under way", progress());
        add(all, "Empty place", emptyPlace());
        add(all, "Chart", new ChartView(stepBars(), Token.SURFACE, table -> {}));
        all.setSize(new Dimension(Look.pixels(WIDTH), Look.pixels(HEIGHT)));
        return all;
    }

    private static void add(JPanel all, String word, JComponent shown) {
        JPanel section = new JPanel(new BorderLayout()) {
            @Override
            public Dimension getMaximumSize() {
                return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
            }
        };
        section.setOpaque(false);
        PaintedView<String> head = SectionHead.view(word);
        section.add(head, BorderLayout.NORTH);
        JPanel right = new JPanel(new BorderLayout());
        right.setOpaque(false);
        right.setBorder(BorderFactory.createEmptyBorder(0, Metric.WIDE_GAP.px(), Metric.STEP.px(), 0));
        right.add(shown, BorderLayout.CENTER);
        section.add(right, BorderLayout.CENTER);
        all.add(section);
    }

    private static JPanel flow(List<? extends Component> parts) {
        JPanel row = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.GAP.px(), 0));
        row.setOpaque(false);
        parts.forEach(row::add);
        return row;
    }

    static Chip chip() {
        return Chip.of("20.0", "%", "Largest step, C-002, 20.0 percent, misses", "20.0 %  largest-step C-002")
                .in(Type.HEADING, Weight.STRONG);
    }

    private static List<FigureChip> chips() {
        List<FigureChip> chips = new ArrayList<>();
        for (Chip.Line line : Chip.Line.values()) {
            chips.add(new FigureChip(chip().at(line), () -> {}));
        }
        chips.add(new FigureChip(chip().changed(), () -> {}));
        chips.add(new FigureChip(chip().changed().at(Chip.Line.SELECTED), () -> {}));
        chips.add(new FigureChip(
                Chip.missing("missing", "Chain angle, C-001, missing input", "", "B-004: fill chainstay_mm")
                        .in(Type.HEADING, Weight.REGULAR),
                () -> {}));
        chips.add(new FigureChip(chip().in(Type.NUMBER, Weight.STRONG).at(Chip.Line.SELECTED), () -> {}));
        return chips;
    }

    private static List<Component> verdicts() {
        List<Component> marks = new ArrayList<>();
        for (Mark mark : Mark.values()) {
            marks.add(new PaintedView<>(
                    new MarkedPainter(Type.BODY), Marked.of(mark, WORDS).strong()));
        }
        return marks;
    }

    static Bar bar(double margin, Verdict verdict, double band) {
        Optional<Band> known = band == 0 ? Optional.empty() : Optional.of(new Band(margin - band, margin + band));
        return new Bar(margin, known, verdict, OptionalDouble.empty(), 0.15, verdict.name());
    }

    private static JComponent bars() {
        List<Bar> bars = List.of(
                bar(0.083, Verdict.MEETS, 0.025),
                bar(-0.091, Verdict.MISSES, 0.025),
                bar(0.014, Verdict.MEETS_CLOSE, 0.019),
                bar(0.001, Verdict.MEETS_CLOSE, 0.02),
                bar(-0.111, Verdict.MISSES, 0),
                bar(-0.545, Verdict.MISSES, 0),
                bar(0.04, Verdict.MEETS, 0).withStretch(0.1),
                bar(0, Verdict.MISSING_INPUT, 0));
        JPanel column = new JPanel(new GridLayout(0, 2));
        column.setOpaque(false);
        for (Bar bar : bars) {
            JLabel word = new JLabel(bar.name());
            word.setFont(Type.TABLE.font(Weight.REGULAR));
            column.add(word);
            column.add(new PaintedView<>(CriterionBar.ALONE, bar));
        }
        return column;
    }

    private static List<Component> ladders() {
        List<Component> marks = new ArrayList<>();
        for (LadderMark size : LadderMark.values()) {
            for (Rung rung : Rung.values()) {
                marks.add(new PaintedView<>(size, Ladder.upTo(rung, WORDS)));
            }
            marks.add(new PaintedView<>(size, Ladder.of(Rung.MEASURABLE, Ladder.Step.FAILS, WORDS)));
            marks.add(new PaintedView<>(size, Ladder.of(Rung.CALCULATED, Ladder.Step.STALE, WORDS)));
        }
        return marks;
    }

    private static JComponent ladderDetail() {
        return new LadderDetail(new LadderDetail.Value(
                Ladder.of(Rung.MEASURABLE, Ladder.Step.FAILS, WORDS),
                Map.of(
                        Rung.TESTED, "by analysis; no test asked",
                        Rung.CALCULATED, "20.0 %, from 25 to 30 teeth",
                        Rung.MEASURABLE, "Largest step, at most 18 %",
                        Rung.STATED, "9 March, gearing lead"),
                "bring the steps 21 to 25 and 25 to 30 teeth to 18 % or less, or agree another target with the"
                        + " riders of G-001.",
                WORDS));
    }

    static ConceptTag concept(int place, ConceptSign.Standing standing) {
        return ConceptTag.of(new ConceptSign(place, standing), "C-00" + place, "1 × 12", WORDS);
    }

    private static List<Component> concepts() {
        List<Component> marks = new ArrayList<>();
        for (ConceptSign.Standing standing : ConceptSign.Standing.values()) {
            for (int place = 1; place <= 4; place++) {
                ConceptSign sign = new ConceptSign(place, standing);
                marks.add(new PaintedView<>(
                        new ConceptMark(Type.BODY, Token.SURFACE), ConceptTag.of(sign, "C-00" + place, "", WORDS)));
            }
        }
        return marks;
    }

    private static List<Component> chooser() {
        List<Component> buttons = new ArrayList<>();
        for (int place = 1; place <= 3; place++) {
            ConceptSign.Standing standing = place == 2 ? ConceptSign.Standing.LEAD : ConceptSign.Standing.OTHER;
            buttons.add(new ConceptChooserButton(concept(place, standing), () -> {}));
        }
        return buttons;
    }

    private static List<Component> basis() {
        List<Component> marks = new ArrayList<>();
        for (Part.Basis basis : Part.Basis.values()) {
            marks.add(new PaintedView<>(new BasisMark(Token.SURFACE), Basis.of(basis, 5, WORDS)));
        }
        Evidence.Pin holds = Evidence.Pin.HOLDS;
        Evidence.Pin nothing = Evidence.Pin.NOTHING;
        for (Evidence evidence : List.of(
                Evidence.of(holds, holds, holds, WORDS),
                Evidence.of(Evidence.Pin.CHANGED, Evidence.Pin.PLANNED, holds, WORDS),
                Evidence.of(Evidence.Pin.MISSES, Evidence.Pin.PLANNED, nothing, WORDS),
                Evidence.of(Evidence.Pin.PLANNED, nothing, nothing, WORDS))) {
            marks.add(new PaintedView<>(new EvidencePins(Token.SURFACE), evidence));
        }
        return marks;
    }

    private static List<Component> bands() {
        Optional<Known.Target> target = Optional.of(new Known.Target(50, "target"));
        List<Component> bands = new ArrayList<>();
        for (Known known : List.of(
                new Known(49.8, 51.6, 50.7, target, "49.8", "51.6 rpm", "49.8 to 51.6 rpm"),
                new Known(52, 52.2, 52.1, target, "52.0", "52.2 rpm", "52.0 to 52.2 rpm"))) {
            PaintedView<Known> view = new PaintedView<>(CriterionBand.PLAIN, known);
            view.setPreferredSize(new Dimension(Look.pixels(250), view.getPreferredSize().height));
            bands.add(view);
        }
        return bands;
    }

    static Facets facets(int active) {
        return new Facets(someFacets(), active, index -> {});
    }

    static List<Facet> someFacets() {
        return List.of(
                new Facet("All", 60, Optional.empty()),
                new Facet("Misses", 9, Optional.of(Mark.MISSES)),
                new Facet("Too close to call", 4, Optional.of(Mark.CLOSE)),
                new Facet("Changed", 1, Optional.of(Mark.CHANGED)));
    }

    private static List<Component> links() {
        ActionLink idle = new ActionLink("Redo", () -> {});
        idle.setEnabled(false);
        return List.of(new LinkLabel("C-002 · cogs", () -> {}), new ActionLink("Undo R-005 target", () -> {}), idle);
    }

    private static JComponent problem() {
        return new ProblemEntry(
                "Part P-014 could not be read and was left as it is.",
                "parts/P-014.json, line 9, column 14: a comma is missing before “mass_g”.",
                List.of(new Step("Show the file", () -> {}), new Step("Read again", () -> {})),
                WORDS);
    }

    private static JComponent progress() {
        return new ProgressLine(
                ProgressLine.Value.of("Finding cassettes: 2410 of about 3300 covered", OptionalDouble.of(0.73), WORDS),
                () -> {},
                WORDS);
    }

    static EmptyPlace emptyPlace() {
        return new EmptyPlace(
                "No tests yet.",
                "34 requirements are calculated to meet; 20 ask for a test.",
                Optional.of(new Step("Plan a test for R-011", () -> {})),
                Optional.of(new Step("Show the 20", () -> {})));
    }

    static StepBars stepBars() {
        return StepBars.of(
                new ConceptSign(2, ConceptSign.Standing.LEAD),
                "C-002",
                List.of(
                        new StepBars.Step(18, 21, 16.7, 3),
                        new StepBars.Step(21, 25, 19.0, 1),
                        new StepBars.Step(25, 30, 20.0, 5),
                        new StepBars.Step(30, 35, 16.7, 5)),
                Optional.of(new StepBars.Limit(18, 18)),
                WORDS);
    }
}
