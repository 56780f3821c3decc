package groupwright.workbench.documents;

import groupwright.workbench.components.Mark;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Set;
import java.util.function.IntConsumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** The numbers of lines beside a template, marked where something is wrong; a click goes to the page of a line. */
final class LineNumbers extends JComponent implements Accessible {
    private static final int DIGITS = 4;

    private final transient TemplateText text;
    private final transient Words words;
    private final transient VerdictMark marks;
    private transient Set<Integer> wrong = Set.of();

    /** @param clicked told the line, from 1 */
    LineNumbers(TemplateText text, Words words, IntConsumer clicked) {
        this.text = text;
        this.words = words;
        this.marks = new VerdictMark(words.locale());
        setName("documents.lines");
        setToolTipText(words.text("lines.tip"));
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        text.addCaretListener(event -> repaint());
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                clicked.accept(text.lineOf(text.viewToModel2D(new Point(0, event.getY()))));
            }
        });
    }

    void mark(Set<Integer> lines) {
        wrong = Set.copyOf(lines);
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        double width = VerdictMark.SIZE
                + 2 * Metric.STEP.units()
                + Type.CAPTION.width("0".repeat(DIGITS), Weight.STRONG)
                + Metric.HALF_STEP.units();
        return new Dimension(Look.pixels(width), text.getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Rectangle clip = graphics.getClipBounds();
        graphics.setColor(Token.SURFACE.colour());
        graphics.fillRect(clip.x, clip.y, clip.width, clip.height);
        int line = text.lineOf(text.viewToModel2D(new Point(0, clip.y)));
        for (; line <= text.getLineCount(); line++) {
            Rectangle rows = text.area(line);
            if (rows.y > clip.y + clip.height || rows.height == 0) {
                return;
            }
            paint(
                    graphics,
                    line,
                    new Rectangle(
                            0,
                            rows.y,
                            getWidth(),
                            text.getFontMetrics(text.getFont()).getHeight()));
        }
    }

    private void paint(Graphics graphics, int line, Rectangle row) {
        boolean here = line == text.line();
        boolean marked = wrong.contains(line);
        try (Drawing drawing = Drawing.on(graphics, row)) {
            double middle = drawing.height() / 2;
            if (marked) {
                try (Drawing mark = drawing.part(
                        Metric.HALF_STEP.units(),
                        Math.floor(middle - VerdictMark.SIZE / 2),
                        VerdictMark.SIZE,
                        VerdictMark.SIZE)) {
                    marks.paint(mark, Mark.MISSES);
                }
            }
            drawing.textUpTo(
                    Integer.toString(line),
                    drawing.width() - Metric.STEP.units(),
                    Type.CAPTION.baseline(middle),
                    Type.CAPTION,
                    here || marked ? Weight.STRONG : Weight.REGULAR,
                    here || marked ? Token.INK : Token.MUTED);
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PANEL;
                }

                @Override
                public String getAccessibleName() {
                    return words.text("lines");
                }
            };
        }
        return accessibleContext;
    }
}
