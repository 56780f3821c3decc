package groupwright.workbench.ripple;

import groupwright.definition.figure.Ask;
import groupwright.definition.record.Address;
import groupwright.workbench.components.ActionLink;
import groupwright.workbench.components.LinkLabel;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.PaintedView;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.AccessibleContext;
import javax.swing.BorderFactory;
import javax.swing.JPanel;
import javax.swing.JScrollPane;

/** What the last step changed, in one line at the foot of the window; opened, everything before and after. */
public final class RipplePanel extends JPanel {
    private static final int LIST_HEIGHT = 240;

    private final transient Locale locale;
    private final transient Words words;
    private final transient Consumer<Address> open;
    private final transient Consumer<Ask> select;
    private final transient Runnable undo;
    private final transient Runnable documents;
    private final JPanel line = new JPanel(new BorderLayout());
    private final JPanel list = new JPanel(new BorderLayout());
    private transient Optional<RippleSheet> shown = Optional.empty();
    private String sentence = "";

    /**
     * @param open goes to a record or field
     * @param select shows the workings of a figure
     * @param undo undoes the step
     * @param documents goes to the documents
     */
    public RipplePanel(Locale locale, Consumer<Address> open, Consumer<Ask> select, Runnable undo, Runnable documents) {
        super(new BorderLayout());
        this.locale = locale;
        this.words = Words.of(RipplePanel.class, locale);
        this.open = open;
        this.select = select;
        this.undo = undo;
        this.documents = documents;
        setName("ripple");
        list.setVisible(false);
        list.setOpaque(false);
        line.setOpaque(false);
        line.setBorder(BorderFactory.createEmptyBorder(0, Metric.GAP.px(), 0, Metric.GAP.px()));
        line.setPreferredSize(new Dimension(1, Metric.RIPPLE_LINE.px()));
        add(list, BorderLayout.CENTER);
        add(line, BorderLayout.SOUTH);
    }

    /** What the last step changed, where that is what is shown. */
    public Optional<RippleSheet> sheet() {
        return shown;
    }

    /** What is said now, for those who hear it. */
    public String sentence() {
        return sentence;
    }

    /** Says something that is no ripple: what was opened, saved or written. */
    public void say(String words) {
        shown = Optional.empty();
        tell(words);
        line.removeAll();
        line.add(new TextView(words, Type.TABLE, Weight.REGULAR, Token.MUTED), BorderLayout.CENTER);
        close();
    }

    /** Shows what a step changed. */
    public void show(RippleSheet sheet, boolean canUndo) {
        shown = Optional.of(sheet);
        tell(sheet.sentence(words.text("quiet")));
        line.removeAll();
        JPanel start = new JPanel(new FlowLayout(FlowLayout.LEADING, Metric.STEP.px(), 0));
        start.setOpaque(false);
        start.setBorder(BorderFactory.createEmptyBorder(Metric.HALF_STEP.px(), -Metric.STEP.px(), 0, 0));
        start.add(new PaintedView<>(new VerdictMark(locale), Mark.CHANGED));
        start.add(new TextView(sheet.edited(), Type.TABLE, Weight.STRONG, Token.INK));
        for (int i = 0; i < sheet.items().size(); i++) {
            start.add(item(sheet.items().get(i), i));
        }
        if (sheet.items().isEmpty()) {
            start.add(new TextView(words.text("quiet"), Type.TABLE, Weight.REGULAR, Token.MUTED));
        }
        line.add(start, BorderLayout.CENTER);
        line.add(actions(canUndo), BorderLayout.LINE_END);
        if (list.isVisible()) {
            fillList(sheet);
        }
        revalidate();
        repaint();
    }

    /** Says after a step how many documents read otherwise now. */
    public void showDocuments(int count, String first) {
        if (shown.isEmpty() || count == 0) {
            return;
        }
        String text =
                count == 1 ? words.text("document.one", first) : words.text("document.many", Integer.toString(count));
        tell(sentence + " " + text + ".");
        LinkLabel link = new LinkLabel(text, Type.TABLE, documents);
        link.setName("ripple.documents");
        if (line.getComponent(0) instanceof JPanel start) {
            start.add(link);
            start.revalidate();
        }
    }

    private Component item(RippleSheet.Item item, int index) {
        if (item.leadsTo().isEmpty()) {
            return new TextView(item.text(), Type.TABLE, Weight.REGULAR, Token.INK);
        }
        LinkLabel link = new LinkLabel(
                item.text(), Type.TABLE, () -> open.accept(item.leadsTo().get()));
        link.setName("ripple.item." + index);
        return link;
    }

    private JPanel actions(boolean canUndo) {
        JPanel end = new JPanel(new FlowLayout(FlowLayout.TRAILING, Metric.STEP.px(), 0));
        end.setOpaque(false);
        end.setBorder(BorderFactory.createEmptyBorder(Metric.HALF_STEP.px(), 0, 0, -Metric.STEP.px()));
        if (canUndo) {
            ActionLink back = new ActionLink(words.text("undo"), undo);
            back.setName("ripple.undo");
            end.add(back);
        }
        ActionLink all = new ActionLink(words.text(list.isVisible() ? "hide" : "showAll"), this::toggle);
        all.setName("ripple.all");
        end.add(all);
        return end;
    }

    private void tell(String said) {
        String before = sentence;
        sentence = said;
        getAccessibleContext().setAccessibleName(said);
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, before, said);
    }

    /** Opens or closes the list. */
    public void toggle() {
        shown.ifPresent(sheet -> {
            list.setVisible(!list.isVisible());
            show(sheet, true);
        });
    }

    private void close() {
        list.setVisible(false);
        revalidate();
        repaint();
    }

    /** Puts the focus on the first link. */
    public void enter() {
        for (Component child : line.getComponents()) {
            if (child instanceof JPanel panel) {
                for (Component inner : panel.getComponents()) {
                    if (inner.isFocusable() && inner.isShowing()) {
                        inner.requestFocusInWindow();
                        return;
                    }
                }
            }
        }
    }

    private void fillList(RippleSheet sheet) {
        list.removeAll();
        RippleTable table = new RippleTable(sheet, words, open, select);
        JScrollPane scroll = new JScrollPane(table);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        int rows = Metric.TABLE_HEAD.px() + Math.max(1, table.getRowCount()) * Metric.ROW.px() + 2;
        scroll.setPreferredSize(new Dimension(1, Math.min(rows, Look.pixels(LIST_HEIGHT))));
        list.add(scroll);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        int least = Metric.RIPPLE_LINE.px() + (list.isVisible() ? list.getPreferredSize().height : 0);
        return new Dimension(size.width, least);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            drawing.level(0, drawing.width(), 0, 1, Token.HAIRLINE);
        }
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.GROUND.colour();
    }
}
