package groupwright.workbench.documents;

import groupwright.documents.pages.OutlineEntry;
import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.project.Obstacle;
import groupwright.documents.trace.Use;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.start.DocumentChoices;
import groupwright.workbench.workings.StackLayout;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;

/** The list of documents on the left, the pages or the template of one on the right. */
final class DocumentsPanel extends JPanel {
    private static final int LIST_WIDTH = 264;

    /** What is done here. */
    interface Acts {
        void choose(String document);

        void choose(Use number);

        void choose(DocumentChoices choices);

        /** Starts a template of this name. */
        void add(String template);

        void write();

        /** Shows a folder outside the program. */
        void open(Path folder);
    }

    /** A document in the list. */
    record Row(String name, DocumentRow.Value value) {}

    private final transient Words words;
    private final transient Acts acts;
    private final DefaultListModel<Row> model = new DefaultListModel<>();
    private final JList<Row> list = new JList<>(model);
    private final PagesView pages;
    private final JScrollPane scroll;
    private final TemplatePane template;
    private final DocumentHead head;
    private final JPanel refusal = new JPanel(new BorderLayout());
    private final JPanel right = new JPanel(new BorderLayout());
    private final AddTemplate add;
    private final WritingPanel writing;
    private DocumentHead.Side side = DocumentHead.Side.PAGE;
    private boolean refused;
    private String title = "";
    private int changes;
    private int page;
    private boolean quiet;

    DocumentsPanel(Words words, DocumentChoices choices, Acts acts) {
        super(new BorderLayout());
        this.words = words;
        this.acts = acts;
        this.pages = new PagesView(acts::choose, line -> toTemplate(new Obstacle.Place(line, 1)), this::turned);
        this.scroll = new JScrollPane(
                pages,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        this.template = new TemplatePane(words, this::toPage);
        this.head = new DocumentHead(words, this::turn, pages::nextChange);
        this.add = new AddTemplate(words, acts::add);
        this.writing = new WritingPanel(words, choices, acts);
        setName("documents");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        refusal.setOpaque(false);
        right.setOpaque(false);
        right.add(head, BorderLayout.NORTH);
        right.add(scroll, BorderLayout.CENTER);
        add(left(), BorderLayout.LINE_START);
        add(right, BorderLayout.CENTER);
    }

    TemplatePane template() {
        return template;
    }

    private JComponent left() {
        Prose heading = new Prose(words.text("place"), Type.TITLE, Weight.STRONG, Token.INK);
        heading.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        list.setName("documents.list");
        list.setOpaque(false);
        list.setCellRenderer(new Cell(words));
        list.setFixedCellHeight(Look.pixels(DocumentRow.HEIGHT));
        list.setFixedCellWidth(1); // as wide as the column
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(words.text("place"));
        list.addListSelectionListener(event -> {
            Row row = list.getSelectedValue();
            if (!event.getValueIsAdjusting() && !quiet && row != null) {
                acts.choose(row.name());
            }
        });
        JScrollPane rows = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        rows.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Look.pixels(1)));
        rows.setOpaque(false);
        rows.getViewport().setOpaque(false);
        JPanel column = new JPanel(new BorderLayout()) {
            @Override
            protected void paintComponent(Graphics graphics) {
                super.paintComponent(graphics);
                try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
                    drawing.upright(drawing.width() - 1, 0, drawing.height(), 1, Token.HAIRLINE);
                }
            }
        };
        column.setOpaque(false);
        column.setPreferredSize(new Dimension(Look.pixels(LIST_WIDTH), 1));
        column.add(heading, BorderLayout.NORTH);
        column.add(rows, BorderLayout.CENTER);
        column.add(foot(), BorderLayout.SOUTH);
        return column;
    }

    private JComponent foot() {
        JPanel foot = new JPanel(new StackLayout(Metric.GAP.px()));
        foot.setOpaque(false);
        foot.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        foot.add(add);
        foot.add(writing);
        return foot;
    }

    void show(List<Row> rows) {
        quiet = true;
        if (rows.size() == model.size()) {
            for (int i = 0; i < rows.size(); i++) {
                if (!rows.get(i).equals(model.get(i))) {
                    model.set(i, rows.get(i));
                }
            }
        } else {
            model.clear();
            model.addAll(rows);
            writing.count(rows.size());
        }
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).value().selected() && list.getSelectedIndex() != i) {
                list.setSelectedIndex(i);
                list.ensureIndexIsVisible(i);
            }
        }
        quiet = false;
    }

    void show(PaintedDocument document, Set<Use> changed, String of) {
        title = of;
        changes = changed.size();
        refused = false;
        head.calculating(false);
        pages.show(document, changed, of);
        arrange();
    }

    /** Says that what is shown is being made anew; the old pages stay meanwhile. */
    void calculating() {
        head.calculating(true);
    }

    /** Shows why there are no pages. */
    void refuse(String of, String what, List<Obstacles.One> obstacles) {
        title = of;
        changes = 0;
        refused = true;
        head.calculating(false);
        JPanel why = new JPanel(new StackLayout(Metric.STEP.px()));
        why.setOpaque(false);
        why.setName("documents.refused");
        why.setBorder(
                BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        why.add(new Prose(what, Type.HEADING, Weight.STRONG, Token.INK));
        why.add(new Obstacles(obstacles, words, this::toTemplate));
        refusal.removeAll();
        refusal.add(why, BorderLayout.NORTH);
        arrange();
    }

    private void turn(DocumentHead.Side to) {
        side = to;
        head.turn(to);
        arrange();
    }

    private void toTemplate(Obstacle.Place place) {
        turn(DocumentHead.Side.TEMPLATE);
        right.validate(); // lines have no place before
        template.goTo(place);
    }

    private void toPage(int line) {
        turn(DocumentHead.Side.PAGE);
        if (!refused) {
            right.validate(); // pages have no place before
            pages.goToLine(line);
        }
    }

    private void arrange() {
        JComponent middle = side == DocumentHead.Side.TEMPLATE ? template : refused ? refusal : scroll;
        if (middle.getParent() != right) {
            right.remove(1);
            right.add(middle, BorderLayout.CENTER);
        }
        headline();
        right.revalidate();
        right.repaint();
    }

    private void turned(int to) {
        if (to != page) {
            page = to;
            headline();
        }
    }

    private void headline() {
        boolean paged = side == DocumentHead.Side.PAGE && !refused;
        int of = pages.document().map(PaintedDocument::pageCount).orElse(0);
        head.show(
                title,
                paged ? section() : "",
                paged && of > 0 ? words.text("page", Integer.toString(page + 1), Integer.toString(of)) : "",
                changes);
    }

    /** The last heading that begins on the page in sight or before. */
    private String section() {
        return pages.document().map(PaintedDocument::outline).orElse(List.of()).stream()
                .filter(entry -> entry.page() <= page && entry.level() == 1)
                .reduce((earlier, later) -> later)
                .map(OutlineEntry::title)
                .orElse("");
    }

    /** Says what was written. */
    void say(String what, Optional<Path> folder) {
        writing.say(what, folder);
    }

    /** Says why no template was added, or that one was. */
    void addRefused(Optional<String> why) {
        add.answer(why);
        if (why.isEmpty()) {
            turn(DocumentHead.Side.TEMPLATE);
            template.text().requestFocusInWindow();
        }
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }

    /** Paints a row of the list. */
    private static final class Cell extends JPanel implements ListCellRenderer<Row> {
        private final transient DocumentRow painter;
        private transient DocumentRow.Value value;
        private boolean focused;

        Cell(Words words) {
            painter = new DocumentRow(new VerdictMark(words.locale()));
            setOpaque(false);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Row> of, Row row, int index, boolean selected, boolean hasFocus) {
            value = row.value().selected(selected);
            focused = hasFocus && of.isFocusOwner();
            getAccessibleContext().setAccessibleName(painter.name(value));
            return this;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
                painter.paint(drawing, value);
                if (focused) {
                    drawing.frame(0, 0, drawing.width(), drawing.height(), 2, Token.ACCENT);
                }
            }
        }
    }
}
