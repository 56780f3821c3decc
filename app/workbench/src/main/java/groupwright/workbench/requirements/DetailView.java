package groupwright.workbench.requirements;

import groupwright.definition.record.Address;
import groupwright.workbench.components.LadderDetail;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Prose;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.text.BadLocationException;
import javax.swing.text.Highlighter;
import javax.swing.text.JTextComponent;

/** One requirement to read: what it says and why at the left, how far it has come at the right. */
final class DetailView extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int LABELS = 86;
    private static final int LADDER_LEAST = 320;
    private static final int LADDER_MOST = 470;
    private static final double LADDER_SHARE = 0.42;

    private final transient Words words;
    private final transient Consumer<Address> opened;
    private final JComponent right;

    /**
     * @param buttons what can be done with it
     */
    DetailView(Detail detail, Words words, Consumer<Address> opened, JComponent buttons) {
        super(new BorderLayout(Metric.WIDE_GAP.px(), 0));
        this.words = words;
        this.opened = opened;
        setOpaque(false);
        setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        JPanel left = new JPanel(new BorderLayout(0, Metric.STEP.px()));
        left.setOpaque(false);
        JPanel texts = texts(detail);
        left.add(texts, BorderLayout.NORTH);
        JPanel below = new JPanel(new BorderLayout());
        below.setOpaque(false);
        below.setBorder(BorderFactory.createEmptyBorder(Metric.STEP.px(), 0, 0, 0));
        below.add(buttons, BorderLayout.NORTH);
        left.add(below, BorderLayout.CENTER);
        add(left, BorderLayout.CENTER);
        right = right(detail);
        add(right, BorderLayout.LINE_END);
        getAccessibleContext().setAccessibleName(detail.id() + " " + detail.title());
    }

    private JPanel texts(Detail detail) {
        JPanel rows = new JPanel(new GridBagLayout());
        rows.setOpaque(false);
        Rows into = new Rows(rows);
        into.head(detail.id().text(), detail.title());
        Prose statement = new Prose(detail.statement(), Type.TABLE, Token.INK);
        mark(statement, detail.findings());
        into.row(words.text("detail.statement"), statement);
        if (!detail.findings().isEmpty()) {
            into.row(words.text("detail.advice"), advice(detail.findings()));
        }
        if (!detail.why().isEmpty()) {
            into.row(words.text("detail.why"), new Prose(detail.why(), Type.TABLE, Token.INK));
        }
        into.row(words.text("detail.answers"), answers(detail));
        if (!detail.relaxing().isEmpty()) {
            into.row(
                    words.text("detail.relaxing"),
                    new Prose(String.join("\n", detail.relaxing()), Type.TABLE, Token.INK));
        }
        return rows;
    }

    private static JComponent advice(List<Detail.Advice> findings) {
        JPanel lines = new JPanel();
        lines.setOpaque(false);
        lines.setLayout(new BoxLayout(lines, BoxLayout.PAGE_AXIS));
        for (Detail.Advice advice : findings) {
            String quoted = advice.finding().words().isEmpty()
                    ? ""
                    : " “" + advice.finding().words() + "”";
            Prose head = new Prose(advice.title() + quoted, Type.TABLE, Weight.STRONG, Token.INK);
            Prose better =
                    new Prose(advice.finding().reason() + " " + advice.finding().better(), Type.SECONDARY, Token.MUTED);
            better.setBorder(BorderFactory.createEmptyBorder(0, 0, Metric.HALF_STEP.px(), 0));
            for (Prose part : List.of(head, better)) {
                part.setAlignmentX(LEFT_ALIGNMENT);
                lines.add(part);
            }
        }
        return lines;
    }

    private JComponent answers(Detail detail) {
        JPanel line = new JPanel(new BorderLayout());
        line.setOpaque(false);
        JPanel links = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        links.setOpaque(false);
        for (Detail.Link link : detail.answers()) {
            links.add(link(link));
        }
        line.add(links, BorderLayout.LINE_START);
        Prose about = new Prose(detail.about(), Type.TABLE, Token.MUTED);
        about.setBorder(BorderFactory.createEmptyBorder(
                Metric.HALF_STEP.px(), detail.answers().isEmpty() ? 0 : Metric.STEP.px(), 0, 0));
        line.add(about, BorderLayout.CENTER);
        return line;
    }

    private JComponent link(Detail.Link link) {
        LinkLabel label = new LinkLabel(link.text(), () -> opened.accept(link.leadsTo()));
        if (!link.tip().isEmpty()) {
            label.setToolTipText(link.tip());
        }
        return label;
    }

    private JComponent right(Detail detail) {
        JPanel right = new JPanel(new BorderLayout(0, Metric.STEP.px()));
        right.setOpaque(false);
        right.setBorder(BorderFactory.createCompoundBorder(
                BorderFactory.createMatteBorder(0, Look.pixels(1), 0, 0, Token.HAIRLINE.colour()),
                BorderFactory.createEmptyBorder(0, Metric.WIDE_GAP.px(), 0, 0)));
        right.add(caption(words.text("detail.ladder")), BorderLayout.NORTH);
        JPanel column = new JPanel(new BorderLayout());
        column.setOpaque(false);
        column.add(
                new LadderDetail(new LadderDetail.Value(
                        detail.ladder(), detail.reached(), detail.next().sentence(), words.locale())),
                BorderLayout.NORTH);
        JPanel links = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        links.setOpaque(false);
        detail.next().fields().forEach(field -> links.add(link(field)));
        JPanel top = new JPanel(new BorderLayout());
        top.setOpaque(false);
        top.add(links, BorderLayout.NORTH);
        column.add(top, BorderLayout.CENTER);
        right.add(column, BorderLayout.CENTER);
        return right;
    }

    @Override
    public void doLayout() {
        int share = (int) (getWidth() * LADDER_SHARE);
        int width = Math.max(Look.pixels(LADDER_LEAST), Math.min(Look.pixels(LADDER_MOST), share));
        right.setPreferredSize(null);
        right.setPreferredSize(new java.awt.Dimension(width, right.getPreferredSize().height));
        super.doLayout();
    }

    /** Carets of texts that are only read do not scroll the page. */
    @Override
    public void scrollRectToVisible(Rectangle part) {
        // the reader scrolls
    }

    private static JLabel caption(String text) {
        JLabel label = new JLabel(text);
        label.setFont(Type.CAPTION.font(Weight.STRONG));
        label.setForeground(Token.MUTED.colour());
        return label;
    }

    private static void mark(JTextComponent text, List<Detail.Advice> findings) {
        for (Detail.Advice advice : findings) {
            try {
                text.getHighlighter()
                        .addHighlight(advice.finding().from(), advice.finding().to(), new Underline());
            } catch (BadLocationException outside) {
                throw new IllegalStateException("a finding lies outside its statement", outside);
            }
        }
    }

    /** Underlines words that make a statement hard to verify. */
    private static final class Underline implements Highlighter.HighlightPainter {
        @Override
        public void paint(Graphics graphics, int from, int to, Shape bounds, JTextComponent text) {
            try {
                Rectangle start = text.modelToView2D(from).getBounds();
                Rectangle end = text.modelToView2D(to).getBounds();
                for (int y = start.y; y <= end.y; y += start.height) {
                    int left = y == start.y ? start.x : 0;
                    int right = y == end.y ? end.x : text.getWidth();
                    Rectangle line = new Rectangle(left, y, Math.max(1, right - left), start.height);
                    try (Drawing drawing = Drawing.on(graphics, line)) {
                        drawing.level(0, drawing.width(), drawing.height() - 2, 1.5, Token.MISSES);
                    }
                }
            } catch (BadLocationException outside) {
                throw new IllegalStateException("a finding lies outside its statement", outside);
            }
        }
    }

    /** Labels at the left, texts at the right. */
    private final class Rows {
        private final JPanel panel;
        private int next;

        Rows(JPanel panel) {
            this.panel = panel;
        }

        void head(String id, String title) {
            JLabel code = new JLabel(id);
            code.setFont(Type.BODY.font(Weight.STRONG));
            code.setForeground(Token.MUTED.colour());
            Prose name = new Prose(title, Type.HEADING, Weight.STRONG, Token.INK);
            add(code, name, 0);
        }

        void row(String label, JComponent text) {
            add(caption(label), text, Metric.STEP.px());
        }

        private void add(JComponent label, JComponent text, int above) {
            GridBagConstraints at = new GridBagConstraints();
            at.gridy = next++;
            at.anchor = GridBagConstraints.BASELINE_LEADING;
            at.insets = new Insets(above, 0, 0, Metric.STEP.px());
            label.setPreferredSize(
                    new java.awt.Dimension(Look.pixels(LABELS) - Metric.STEP.px(), label.getPreferredSize().height));
            label.setMinimumSize(label.getPreferredSize());
            at.anchor = GridBagConstraints.FIRST_LINE_START;
            panel.add(label, at);
            at.gridx = 1;
            at.weightx = 1;
            at.fill = GridBagConstraints.HORIZONTAL;
            at.insets = new Insets(above, 0, 0, 0);
            panel.add(text, at);
        }
    }
}
