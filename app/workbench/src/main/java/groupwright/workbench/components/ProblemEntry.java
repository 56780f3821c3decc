package groupwright.workbench.components;

import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import java.util.Locale;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** What went wrong and what was kept, where, and what helps; it stays until it is closed. */
public final class ProblemEntry extends JPanel {
    /**
     * A problem.
     *
     * @param sentence what happened and what was kept
     * @param where file, line, column, or id and field; may be empty
     * @param ways what helps; the last is usually to close the entry
     */
    public ProblemEntry(String sentence, String where, List<Step> ways, Locale locale) {
        super(new BorderLayout(Metric.STEP.px(), 0));
        setOpaque(false);
        setBorder(
                BorderFactory.createEmptyBorder(Metric.STEP.px(), Metric.GAP.px(), Metric.STEP.px(), Metric.GAP.px()));
        JPanel mark = new JPanel(new BorderLayout());
        mark.setOpaque(false);
        mark.setBorder(BorderFactory.createEmptyBorder(Metric.HALF_STEP.px() / 2, 0, 0, 0));
        mark.add(new PaintedView<>(new VerdictMark(locale), Mark.MISSES), BorderLayout.NORTH);
        add(mark, BorderLayout.LINE_START);
        JPanel texts = new JPanel();
        texts.setOpaque(false);
        texts.setLayout(new BoxLayout(texts, BoxLayout.PAGE_AXIS));
        texts.add(indented(new Prose(sentence, Type.BODY, Weight.STRONG, Token.INK)));
        if (!where.isEmpty()) {
            texts.add(indented(new Prose(where, Type.SECONDARY, Token.MUTED)));
        }
        if (!ways.isEmpty()) {
            texts.add(atStart(links(ways)));
        }
        add(texts, BorderLayout.CENTER);
        getAccessibleContext().setAccessibleName(sentence);
        getAccessibleContext().setAccessibleDescription(where);
    }

    private static JComponent atStart(JComponent component) {
        component.setAlignmentX(LEFT_ALIGNMENT);
        return component;
    }

    /** Level with the links, which leave room for their focus ring. */
    private static JComponent indented(Prose prose) {
        prose.setBorder(BorderFactory.createEmptyBorder(0, FocusBorder.room(), 0, 0));
        return atStart(prose);
    }

    private static JComponent links(List<Step> ways) {
        JPanel links = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        links.setOpaque(false);
        for (Step way : ways) {
            JPanel spaced = new JPanel(new BorderLayout());
            spaced.setOpaque(false);
            spaced.setBorder(BorderFactory.createEmptyBorder(0, 0, 0, Metric.GAP.px()));
            spaced.add(new LinkLabel(way.label(), Type.SECONDARY, way.done()));
            links.add(spaced);
        }
        return links;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            drawing.box(0, 0, drawing.width(), drawing.height(), Token.RAISED);
            drawing.frame(0, 0, drawing.width(), drawing.height(), 1, Token.HAIRLINE);
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJPanel() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.ALERT;
                }
            };
        }
        return accessibleContext;
    }
}
