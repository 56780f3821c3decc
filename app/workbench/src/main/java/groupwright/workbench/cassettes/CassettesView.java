package groupwright.workbench.cassettes;

import groupwright.definition.record.RecordId;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.ProblemEntry;
import groupwright.workbench.components.Step;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.PlaceHead;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** What stands in the middle of the window: limits at the left, what was found at the right. */
final class CassettesView extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient CassetteWords say;
    private final transient Words words;
    private final transient Acts acts;
    private final PlaceHead head;
    private final LimitsPanel limits;
    private final WhyNot why;
    private final ResultPanel result;
    private final Stack trouble = new Stack(Metric.HALF_STEP.units());
    private final JPanel side = clear();
    private final JPanel middle = clear();
    private transient Optional<CassettesSheet> sheet = Optional.empty();
    private transient Optional<Shown> shown = Optional.empty();

    /** What the view asks for. */
    interface Acts extends LimitsPanel.Acts, DetailPanel.Acts {
        /** The user looks at it in another way. */
        void look(Shown next);

        void open(RecordId requirement);

        void chooseLead();
    }

    CassettesView(Bench bench, Acts acts) {
        super(new BorderLayout());
        this.say = new CassetteWords(bench.locale());
        this.words = say.words();
        this.acts = acts;
        this.head = new PlaceHead(words.text("title"));
        this.limits = new LimitsPanel(words, acts);
        this.why = new WhyNot(say);
        this.result = new ResultPanel(say, acts::look, acts);
        setBackground(Token.SURFACE.colour());
        setOpaque(true);
        getAccessibleContext().setAccessibleName(words.text("title"));
        Stack left = new Stack(Metric.STEP.units());
        left.add(limits);
        left.add(trouble);
        left.add(why);
        trouble.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.STEP.px()));
        trouble.setVisible(false);
        why.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), Metric.GAP.px(), Metric.STEP.px()));
        why.setVisible(false);
        JScrollPane scrolled = Scrolled.of(left);
        scrolled.setHorizontalScrollBarPolicy(ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scrolled.setPreferredSize(new java.awt.Dimension(Look.pixels(260), Look.pixels(100)));
        scrolled.setBorder(BorderFactory.createMatteBorder(0, 0, 0, 1, Token.HAIRLINE.colour()));
        side.add(scrolled);
        add(head, BorderLayout.NORTH);
        add(side, BorderLayout.LINE_START);
        add(middle, BorderLayout.CENTER);
    }

    private static JPanel clear() {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        return panel;
    }

    private static JComponent padded(JComponent inside) {
        JPanel panel = clear();
        panel.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        panel.add(inside, BorderLayout.NORTH);
        return panel;
    }

    private void middle(JComponent inside) {
        middle.removeAll();
        middle.add(inside);
        middle.revalidate();
        middle.repaint();
    }

    /** The project as it stands now. */
    void show(CassettesSheet next) {
        boolean other = !sheet.flatMap(CassettesSheet::lead)
                .map(CassettesSheet.Lead::id)
                .equals(next.lead().map(CassettesSheet.Lead::id));
        sheet = Optional.of(next);
        limits.riders(next.riders());
        side.setVisible(next.lead().isPresent());
        if (other) {
            next.lead().ifPresent(lead -> limits.start(Draft.about(lead.concept()), lead.id()));
            shown = Optional.empty();
        }
        head.about(words.text(next.lead().isPresent() ? "about" : "about.none"));
        shown.ifPresentOrElse(this::show, this::nothing);
    }

    private void nothing() {
        why.setVisible(false);
        CassettesSheet now = sheet.orElseThrow();
        if (now.lead().isEmpty()) {
            middle(padded(new EmptyPlace(
                    words.text("empty.what"),
                    words.text("empty.why", now.concepts()),
                    Optional.of(new Step(words.text("empty.lead"), acts::chooseLead)),
                    Optional.empty())));
        } else {
            middle(padded(new EmptyPlace(
                    words.text("none.yet"),
                    words.text("none.yet.why", now.lead().get().id(), now.requirements()),
                    Optional.empty(),
                    Optional.empty())));
        }
    }

    /** What was found. */
    void show(Shown next) {
        CassettesSheet now = sheet.orElseThrow();
        now.lead().ifPresent(lead -> {
            shown = Optional.of(next);
            why.setVisible(true);
            if (next.finding().shown().isEmpty()) {
                middle(padded(new ProblemEntry(
                        words.text("none.atAll"), say.nothing(next.finding().coverage()), List.of(), say.locale())));
                return;
            }
            result.show(next, now, lead);
            if (result.getParent() != middle) {
                middle(result);
            }
        });
    }

    /** A search has ended. */
    void found(Finding finding) {
        limits.took(words.text("took", say.number(finding.took(), finding.took() < 0.1 ? 2 : 1)));
        why.about(finding.set());
    }

    /** No cassette suits; at first it is not known what would have to give way. */
    void none() {
        trouble(words.text("ease.wait"), List.of());
    }

    /** What would have to give way. */
    void eased(Easing.Eased eased) {
        String text = eased.outcome().free() > 0
                ? words.text("ease.free", say.number(eased.outcome().free(), 0))
                : new EasingWords(say).of(eased);
        trouble(text, EasingWords.requirements(eased));
    }

    void notEased() {
        trouble(words.text("ease.stopped"), List.of());
    }

    void noTrouble() {
        trouble.removeAll();
        trouble.setVisible(false);
    }

    /** Below the limits, where they can be changed; with links to the requirements it speaks of. */
    private void trouble(String text, List<RecordId> requirements) {
        trouble.removeAll();
        trouble.add(new ProblemEntry(words.text("ease.none"), text, List.of(), say.locale()));
        Line links = new Line(Metric.STEP.units());
        requirements.forEach(id -> links.add(new LinkLabel(id.text(), () -> acts.open(id))));
        if (!requirements.isEmpty()) {
            trouble.add(links);
        }
        trouble.setVisible(true);
        trouble.revalidate();
    }

    /** A question was too large. */
    void refused(String sentence) {
        why.setVisible(false);
        String upper = Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".";
        middle(padded(new ProblemEntry(upper, "", List.of(), say.locale())));
    }

    LimitsPanel limits() {
        return limits;
    }

    WhyNot why() {
        return why;
    }

    ResultPanel result() {
        return result;
    }

    Optional<Shown> shown() {
        return shown;
    }

    CassetteWords say() {
        return say;
    }
}
