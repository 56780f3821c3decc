package groupwright.workbench.documents;

import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.project.Format;
import groupwright.documents.trace.Use;
import groupwright.workbench.components.ActionButton;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.Prose;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import groupwright.workbench.workings.EndsLayout;
import groupwright.workbench.workings.StackLayout;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.EnumSet;
import java.util.List;
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

/** The list of documents on the left, the pages of one on the right. */
final class DocumentsPanel extends JPanel {
    private static final int LIST_WIDTH = 264;

    /** What is done here. */
    interface Acts {
        void choose(String document);

        void choose(Use number);

        void write(Set<Format> formats);
    }

    /** A document in the list. */
    record Row(String name, DocumentRow.Value value) {}

    private final transient Words words;
    private final transient Acts acts;
    private final DefaultListModel<Row> model = new DefaultListModel<>();
    private final JList<Row> list = new JList<>(model);
    private final PagesView pages;
    private final JScrollPane scroll;
    private final JPanel head = new JPanel(new EndsLayout(Metric.GAP.px(), Metric.TOP_BAR.px() - Metric.STEP.px()));
    private final JPanel right = new JPanel(new BorderLayout());
    private final Prose said;
    private String title = "";
    private int changes;
    private int page;
    private boolean quiet;
    private boolean waiting;

    DocumentsPanel(Words words, Acts acts) {
        super(new BorderLayout());
        this.words = words;
        this.acts = acts;
        this.pages = new PagesView(acts::choose, this::turned);
        this.scroll = new JScrollPane(
                pages,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_ALWAYS,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        this.said = new Prose(words.text("out"), Type.SECONDARY, Token.MUTED);
        setName("documents");
        scroll.setBorder(BorderFactory.createEmptyBorder());
        head.setOpaque(false);
        head.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        right.setOpaque(false);
        right.add(head, BorderLayout.NORTH);
        right.add(scroll, BorderLayout.CENTER);
        add(left(), BorderLayout.LINE_START);
        add(right, BorderLayout.CENTER);
    }

    private JComponent left() {
        Prose heading = new Prose(words.text("place"), Type.TITLE, Weight.STRONG, Token.INK);
        heading.setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        list.setName("documents.list");
        list.setOpaque(false);
        list.setCellRenderer(new Cell(words));
        list.setFixedCellHeight(Look.pixels(DocumentRow.HEIGHT));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(words.text("place"));
        list.addListSelectionListener(event -> {
            Row row = list.getSelectedValue();
            if (!event.getValueIsAdjusting() && !quiet && row != null) {
                acts.choose(row.name());
            }
        });
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
        column.add(list, BorderLayout.CENTER);
        column.add(foot(), BorderLayout.SOUTH);
        return column;
    }

    private JComponent foot() {
        JPanel foot = new JPanel(new StackLayout(Metric.STEP.px()));
        foot.setOpaque(false);
        foot.setBorder(
                BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        foot.add(new Prose(words.text("templates"), Type.SECONDARY, Token.MUTED));
        foot.add(new Prose(words.text("writeAll"), Type.TABLE, Weight.STRONG, Token.INK));
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        buttons.setOpaque(false);
        buttons.setBorder(BorderFactory.createEmptyBorder(0, -Metric.STEP.px(), 0, 0));
        ActionButton markdown =
                ActionButton.plain(words.text("markdown"), () -> acts.write(EnumSet.of(Format.MARKDOWN)));
        markdown.setName("documents.markdown");
        ActionButton pdf = ActionButton.main(words.text("pdf"), () -> acts.write(EnumSet.of(Format.PDF)));
        pdf.setName("documents.pdf");
        buttons.add(markdown);
        buttons.add(pdf);
        foot.add(buttons);
        foot.add(said);
        return foot;
    }

    void show(List<Row> rows) {
        quiet = true;
        model.clear();
        model.addAll(rows);
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).value().selected()) {
                list.setSelectedIndex(i);
            }
        }
        quiet = false;
    }

    void show(PaintedDocument document, Set<Use> changed, String of) {
        title = of;
        waiting = false;
        changes = changed.size();
        pages.show(document, changed, of);
        if (scroll.getParent() != right) {
            right.remove(1);
            right.add(scroll, BorderLayout.CENTER);
        }
        headline();
        right.revalidate();
        right.repaint();
    }

    /** Says that what is shown is being made anew; the old pages stay meanwhile. */
    void calculating() {
        waiting = true;
        headline();
    }

    private void turned(int to) {
        if (to != page) {
            page = to;
            headline();
        }
    }

    private void headline() {
        head.removeAll();
        head.add(new Prose(title, Type.BODY, Weight.STRONG, Token.INK));
        if (waiting) {
            Prose calculating = new Prose(words.text("calculating"), Type.SECONDARY, Token.MUTED);
            calculating.setLineWrap(false);
            head.add(calculating);
        }
        if (changes > 0) {
            ActionLink next = new ActionLink(words.text("nextChange"), pages::nextChange);
            next.setName("documents.nextChange");
            head.add(next);
        }
        int of = pages.document().map(PaintedDocument::pageCount).orElse(0);
        Prose count = new Prose(
                words.text("page", Integer.toString(page + 1), Integer.toString(of)),
                Type.BODY,
                Weight.STRONG,
                Token.INK);
        count.setLineWrap(false);
        head.add(count);
        head.revalidate();
        head.repaint();
    }

    /** Shows why there are no pages. */
    void refuse(String what, List<String> sentences) {
        JPanel why = new JPanel(new StackLayout(Metric.STEP.px()));
        why.setOpaque(false);
        why.setName("documents.refused");
        why.setBorder(
                BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px(), Metric.GAP.px()));
        why.add(new Prose(what, Type.HEADING, Weight.STRONG, Token.INK));
        sentences.forEach(sentence -> why.add(new Prose(sentence, Type.TABLE, Token.INK)));
        head.removeAll();
        right.remove(1);
        right.add(why, BorderLayout.CENTER);
        right.revalidate();
        right.repaint();
    }

    /** Says what was written. */
    void say(String what) {
        said.setText(what);
        said.getAccessibleContext().setAccessibleName(what);
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
            DocumentRow.Value plain = row.value();
            value = new DocumentRow.Value(plain.title(), plain.state(), plain.mark(), selected);
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
