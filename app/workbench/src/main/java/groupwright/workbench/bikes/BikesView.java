package groupwright.workbench.bikes;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Address;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import groupwright.workbench.bench.Bench;
import groupwright.workbench.bikes.BikesSheet.Pair;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.EmptyPlace;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.Marked;
import groupwright.workbench.components.MarkedPainter;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.Step;
import groupwright.workbench.lists.CellText;
import groupwright.workbench.lists.CellTextPainter;
import groupwright.workbench.lists.Line;
import groupwright.workbench.lists.PlaceHead;
import groupwright.workbench.lists.Stack;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Words;
import groupwright.workbench.records.SidePane;
import java.awt.BorderLayout;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;

/** What stands in the middle of the window: the matrix, and below it checks and drawing, or the form of a bike. */
final class BikesView extends JPanel {
    private static final long serialVersionUID = 1L;

    /** What the view asks for. */
    interface Asked {
        void draw(RecordId bike);

        void check(Pair pair);

        void closeChecks();

        /** Opens the place of concepts, where one is added. */
        void goToConcepts();
    }

    private final transient Bench bench;
    private final transient Words words;
    private final transient Asked asked;
    private final PlaceHead head;
    private final Matrix matrix;
    private final ChecksPanel checks;
    private final PicturePanel picture;
    private final Stack retired = new Stack(Metric.HALF_STEP.units());
    private final Stack below = new Stack(Metric.STEP.units());
    private final JScrollPane scrolledBelow = scrolled(below);
    private final SidePane side;
    private final JPanel lower = clear();
    private final JPanel body = clear();
    private transient BikesSheet sheet = BikesSheet.NOTHING;

    /** @param answer opens the answer to a bike maker; nothing where there is no such document */
    BikesView(Bench bench, Catalogue catalogue, Words words, Asked asked, Optional<Runnable> answer) {
        super(new BorderLayout());
        this.bench = bench;
        this.words = words;
        this.asked = asked;
        setName("bikes");
        getAccessibleContext().setAccessibleName(words.text("title"));
        side = new SidePane(bench, catalogue, RecordKinds.BIKE, words, this::arrange);
        head = new PlaceHead(words.text("title"), buttons(answer));
        matrix = new Matrix(bench, words, new Steps());
        checks = new ChecksPanel(bench, words, this::closeChecks);
        picture = new PicturePanel(bench, words, table -> side.showTable(words.text("above.numbers"), table));
        below.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        add(head, BorderLayout.NORTH);
        add(body, BorderLayout.CENTER);
    }

    private ActionButton[] buttons(Optional<Runnable> answer) {
        List<ActionButton> buttons = new ArrayList<>();
        answer.ifPresent(opened -> {
            ActionButton button = ActionButton.plain(words.text("answer"), opened);
            button.setName("bikes.answer");
            buttons.add(button);
        });
        ActionButton add = ActionButton.main(words.text("add"), this::add);
        add.setName("bikes.add");
        buttons.add(add);
        return buttons.toArray(ActionButton[]::new);
    }

    private void add() {
        side.add();
    }

    /** What the matrix asks for. */
    private final class Steps implements Matrix.Asked {
        @Override
        public void draw(RecordId bike) {
            asked.draw(bike);
            if (side.shows().isPresent()) {
                side.showForm(bike);
                noteMissing();
            }
        }

        @Override
        public void check(Pair pair) {
            side.close();
            asked.check(pair);
        }

        @Override
        public void form(RecordId bike) {
            asked.draw(bike);
            side.showForm(bike);
            noteMissing();
            validate();
            matrix.toSight();
        }

        @Override
        public void close() {
            side.close();
            asked.closeChecks();
        }
    }

    private void closeChecks() {
        asked.closeChecks();
        matrix.concepts().requestFocusInWindow();
    }

    private static JPanel clear() {
        JPanel panel = new JPanel(new BorderLayout());
        panel.setOpaque(false);
        return panel;
    }

    private static JScrollPane scrolled(JComponent inside) {
        JScrollPane pane = new JScrollPane(
                inside,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        pane.setBorder(BorderFactory.createEmptyBorder());
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        pane.getVerticalScrollBar().setUnitIncrement(Metric.ROW.px());
        return pane;
    }

    /** Shows the bikes as they stand now. */
    void show(BikesSheet next) {
        boolean opening = next.opened().isPresent()
                && !next.opened()
                        .map(BikesSheet.Opened::pair)
                        .equals(sheet.opened().map(BikesSheet.Opened::pair));
        sheet = next;
        head.about(summary(next));
        matrix.show(next);
        side.refresh();
        noteMissing();
        fillBelow(next);
        arrange();
        if (opening) {
            validate();
            scrolledBelow.getVerticalScrollBar().setValue(0);
            matrix.toSight();
        }
    }

    private String summary(BikesSheet next) {
        int count = next.rows().size();
        if (count == 0) {
            return "";
        }
        return words.text(count == 1 ? "summary.one" : "summary", words.text("count", count));
    }

    /** The fields that stand in the way are named above the form. */
    private void noteMissing() {
        Optional<BikesSheet.Row> row = side.shows()
                .flatMap(id ->
                        sheet.rows().stream().filter(one -> one.id().equals(id)).findFirst());
        side.note(row.filter(one -> !one.fields().isEmpty()).map(this::missing));
    }

    private Line missing(BikesSheet.Row row) {
        Line line = new Line(
                Metric.GAP.units(),
                new PaintedView<>(new MarkedPainter(Type.TABLE), Marked.of(Mark.MISSING, bench.locale())));
        row.fields().forEach(lack -> {
            LinkLabel link =
                    new LinkLabel(lack.words(), () -> side.reveal(lack.input().address()));
            link.setName("bikes.missing." + lack.input().address());
            link.setToolTipText(lack.input().remedy());
            line.add(link);
        });
        return line;
    }

    private void fillBelow(BikesSheet next) {
        below.removeAll();
        next.opened().ifPresent(opened -> {
            checks.show(opened);
            below.add(checks);
        });
        next.drawing().ifPresent(drawn -> {
            picture.show(drawn);
            below.add(picture);
        });
        retired.removeAll();
        next.retired().forEach(bike -> retired.add(retired(bike)));
        if (!next.retired().isEmpty()) {
            below.add(retired);
        }
        below.revalidate();
        below.repaint();
    }

    private JComponent retired(BikesSheet.Retired bike) {
        LinkLabel link = new LinkLabel(bike.id() + " " + bike.title(), () -> side.showForm(bike.id()));
        link.setName("bikes.retired." + bike.id());
        return new Line(Metric.STEP.units(), text(words.text("retired")), link, text(bike.reason()));
    }

    private static JComponent text(String text) {
        return new PaintedView<>(CellTextPainter.PLAIN, CellText.muted(text));
    }

    /** The form of a bike takes the room of checks and drawing while it is open. */
    private void arrange() {
        lower.removeAll();
        lower.add(side.isOpen() ? side : scrolledBelow);
        JComponent upper = sheet.rows().isEmpty() ? noBikes() : sheet.concepts().isEmpty() ? noConcepts() : matrix;
        boolean whole =
                upper != matrix && sheet.rows().isEmpty() && sheet.retired().isEmpty() && !side.isOpen();
        if (whole) {
            body.removeAll();
            body.add(upper);
        } else if (!(body.getComponentCount() == 1
                && body.getComponent(0) instanceof SharedHeight split
                && split.getTopComponent() == upper)) {
            body.removeAll();
            body.add(new SharedHeight(upper, lower, this::wantedBelow));
        }
        body.revalidate();
        body.repaint();
        lower.revalidate();
    }

    /** Forms and checks are read whole where there is room. */
    private int wantedBelow() {
        if (side.isOpen()) {
            return Integer.MAX_VALUE;
        }
        return sheet.opened().isPresent() ? checks.getPreferredSize().height + 2 * Metric.STEP.px() : 0;
    }

    private JComponent noBikes() {
        int concepts = bench.definition().count(RecordKinds.CONCEPT);
        return padded(new EmptyPlace(
                words.text("empty.what"),
                words.text("empty.why", concepts),
                Optional.of(new Step(words.text("add.first"), this::add)),
                Optional.empty()));
    }

    private JComponent noConcepts() {
        JPanel both = clear();
        both.add(
                padded(new EmptyPlace(
                        words.text("noConcepts.what"),
                        words.text("noConcepts.why", sheet.rows().size()),
                        Optional.of(new Step(words.text("noConcepts.go"), asked::goToConcepts)),
                        Optional.empty())),
                BorderLayout.NORTH);
        both.add(matrix, BorderLayout.CENTER);
        return both;
    }

    private static JComponent padded(JComponent shown) {
        JPanel panel = clear();
        panel.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        panel.add(shown);
        return panel;
    }

    /** Shows a bike with all its fields, the one named in focus. */
    void reveal(Address address) {
        matrix.select(address.record());
        side.reveal(address);
        noteMissing();
        validate();
        matrix.toSight();
    }

    Matrix matrix() {
        return matrix;
    }

    SidePane side() {
        return side;
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
