package groupwright.workbench.cassettes;

import groupwright.documents.charts.ChartTable;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.ChartView;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.SectionHead;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;

/** One cassette beside that of today, and what can be done with it. */
final class DetailPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int CHART = 268;
    private static final int COLUMN = 290;

    /** What can be done. */
    interface Acts {
        void set(Cassette cassette);

        void keep(Cassette cassette);

        void pin(Cassette cassette);

        /** Drafts a decision between the cogs of today, the pinned cassettes and this one. */
        void draft(Cassette cassette);
    }

    /** What is shown depends on this alone. */
    private record Told(
            Cassette chosen,
            Cassette today,
            String letter,
            CassettesSheet.Lead lead,
            CassettesSheet sheet,
            Inquiry inquiry) {}

    private final transient CassetteWords say;
    private final transient Acts acts;
    private transient Optional<Told> told = Optional.empty();
    private final Stack stack = new Stack(Metric.STEP.units());

    DetailPanel(CassetteWords say, Acts acts) {
        super(new BorderLayout());
        this.say = say;
        this.acts = acts;
        setOpaque(false);
        stack.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        add(Scrolled.of(stack));
        setName("cassette");
    }

    /** Shows a cassette. */
    void show(CassettesSheet sheet, CassettesSheet.Lead lead, Shown shown, Candidate chosen) {
        Told next = new Told(
                chosen.cassette(),
                shown.finding().today().cassette(),
                shown.letter(chosen.cassette()),
                lead,
                sheet,
                shown.finding().inquiry());
        if (told.equals(Optional.of(next))) {
            return; // new verdicts change nothing here, and what has the focus keeps it
        }
        told = Optional.of(next);
        stack.removeAll();
        DetailReading reading = new DetailReading(say, sheet, lead, shown, chosen);
        stack.add(head(sheet, lead, shown, chosen));
        List<ChartView> charts = new ArrayList<>();
        Consumer<ChartTable> nowhere = table -> {}; // its numbers stand in the columns below
        reading.bars().forEach(bars -> charts.add(new ChartView(bars, Token.SURFACE, nowhere)));
        stack.add(new Halves(CHART, charts));
        stack.add(new Halves(
                COLUMN,
                List.of(
                        part(
                                say.words().text("against.head", lead.id()),
                                reading.against(),
                                say.words().text("weight.about")),
                        part(
                                say.words().text("pairs.head"),
                                reading.pairs(),
                                say.words().text("pairs.about", Integer.toString((int) Candidate.CADENCE_RPM))))));
        stack.add(part(
                say.words().text("neighbours.head"),
                reading.neighbours(),
                say.words().text("neighbours.about")));
        revalidate();
        repaint();
    }

    private JComponent part(String head, Grid grid, String about) {
        Stack part = new Stack(Metric.HALF_STEP.units());
        part.add(SectionHead.view(head));
        PaintedView<Grid> view = new PaintedView<>(Grid.Painting.PLAIN, grid);
        view.setMinimumSize(new java.awt.Dimension(1, 1));
        part.add(view);
        part.add(new Prose(about, Type.CAPTION, Token.MUTED));
        return part;
    }

    private JComponent head(CassettesSheet sheet, CassettesSheet.Lead lead, Shown shown, Candidate chosen) {
        Cassette cassette = chosen.cassette();
        String letter = shown.letter(cassette);
        JLabel name = new JLabel(letter.isEmpty() ? chosen.cogs() : letter + "  " + chosen.cogs());
        name.setFont(Type.BODY.font(Weight.STRONG));
        ActionButton set = ActionButton.plain(say.words().text("set", lead.id()), () -> acts.set(cassette));
        set.setName("set");
        set.setEnabled(!cassette.equals(shown.finding().today().cassette()));
        ActionButton keep =
                ActionButton.plain(say.words().text("keep", sheet.next().id()), () -> acts.keep(cassette));
        keep.setName("keep");
        ActionButton pin =
                ActionButton.plain(say.words().text(letter.isEmpty() ? "pin" : "unpin"), () -> acts.pin(cassette));
        pin.setName("pin");
        ActionButton draft = ActionButton.plain(say.words().text("draft"), () -> acts.draft(cassette));
        draft.setName("draft");
        draft.setEnabled(!cassette.equals(shown.finding().today().cassette()));
        Line line = new Line(Metric.STEP.units(), name, set, keep, pin, draft);
        line.setBorder(BorderFactory.createEmptyBorder(Metric.HALF_STEP.px(), 0, Metric.HALF_STEP.px(), 0));
        return line;
    }
}
