package groupwright.workbench.documents;

import groupwright.documents.pages.Area;
import groupwright.documents.pages.PageLink;
import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.pages.PaintedNumber;
import groupwright.documents.trace.Use;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ActionEvent;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.Scrollable;

/**
 * The pages of a document one below the other, as wide as the room allows. Left and Right walk from number to number, Enter
 * opens the workings of one; a click does the same.
 */
final class PagesView extends JComponent implements Scrollable, Accessible {
    private static final double WIDEST = 1.6; // pixels for a point at 100 %
    private static final int INCH = 72;
    private static final int PIXELS = 96;

    private final transient Consumer<Use> chosen;
    private final transient IntConsumer pageShown;
    private transient Optional<PaintedDocument> document = Optional.empty();
    private transient Set<Use> changed = Set.of();
    private transient List<Stop> stops = List.of();
    private int stop = -1;
    private String name = "";

    /** A number one can walk to. */
    private record Stop(int page, PaintedNumber number) {}

    /**
     * @param chosen told which number was clicked
     * @param pageShown told which page is in sight, from 0
     */
    PagesView(Consumer<Use> chosen, IntConsumer pageShown) {
        this.chosen = chosen;
        this.pageShown = pageShown;
        setName("pages");
        setFocusable(true);
        MouseAdapter mouse = new Mouse();
        addMouseListener(mouse);
        addMouseMotionListener(mouse);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
        key("RIGHT", () -> walk(1));
        key("LEFT", () -> walk(-1));
        key("ENTER", () -> here().ifPresent(at -> chosen.accept(at.number().use())));
        key("PAGE_DOWN", () -> turn(1));
        key("PAGE_UP", () -> turn(-1));
    }

    private void key(String stroke, Runnable action) {
        getInputMap().put(KeyStroke.getKeyStroke(stroke), stroke);
        getActionMap().put(stroke, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                action.run();
            }
        });
    }

    /**
     * Shows a document; the place one reads stays.
     *
     * @param marked numbers to be marked as changed
     */
    void show(PaintedDocument next, Set<Use> marked, String title) {
        document = Optional.of(next);
        changed = marked;
        name = title;
        List<Stop> found = new ArrayList<>();
        for (int page = 0; page < next.pageCount(); page++) {
            for (PaintedNumber number : next.numbersOn(page)) {
                found.add(new Stop(page, number));
            }
        }
        stops = List.copyOf(found);
        stop = Math.min(stop, stops.size() - 1);
        revalidate();
        repaint();
    }

    Optional<PaintedDocument> document() {
        return document;
    }

    /** Goes to the next number that is marked as changed; back to the first behind the last. */
    void nextChange() {
        for (int i = 1; i <= stops.size(); i++) {
            int at = Math.floorMod(stop + i, stops.size());
            if (changed.contains(stops.get(at).number().use())) {
                stop = at;
                requestFocusInWindow();
                scrollTo(stops.get(at));
                return;
            }
        }
    }

    private Optional<Stop> here() {
        return stop >= 0 && stop < stops.size() ? Optional.of(stops.get(stop)) : Optional.empty();
    }

    private void walk(int by) {
        if (!stops.isEmpty()) {
            stop = stop < 0 ? firstInSight() : Math.floorMod(stop + by, stops.size());
            scrollTo(stops.get(stop));
            getAccessibleContext()
                    .firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, null, accessibleHere());
        }
    }

    private String accessibleHere() {
        return here().map(at ->
                        at.number().entry().entry().title() + ", " + at.number().shown())
                .orElse(name);
    }

    private int firstInSight() {
        Rectangle seen = getVisibleRect();
        for (int i = 0; i < stops.size(); i++) {
            if (seen.intersects(area(stops.get(i).page(), stops.get(i).number().area()))) {
                return i;
            }
        }
        return 0;
    }

    private void scrollTo(Stop to) {
        Rectangle area = area(to.page(), to.number().area());
        area.grow(Metric.WIDE_GAP.px(), 2 * Metric.WIDE_GAP.px());
        scrollRectToVisible(area);
        repaint();
    }

    private void turn(int by) {
        Rectangle seen = getVisibleRect();
        seen.y += by * (seen.height - Metric.ROW.px());
        scrollRectToVisible(seen);
    }

    /** Goes to a page. */
    void goTo(int page, double y) {
        scrollRectToVisible(new Rectangle(
                0, top(page) + (int) Math.round(y * scale()) - Metric.WIDE_GAP.px(), 1, getVisibleRect().height));
    }

    private double scale() {
        double most = WIDEST * Look.scale();
        int room = Math.max(1, (getParent() == null ? getWidth() : getParent().getWidth()) - 2 * Metric.GAP.px());
        return document.map(painted -> Math.min(most, room / painted.pageWidth()))
                .orElse((double) PIXELS / INCH);
    }

    private int pageHeight() {
        return document.map(painted -> (int) Math.ceil(painted.pageHeight() * scale()))
                .orElse(0);
    }

    private int pageWidth() {
        return document.map(painted -> (int) Math.ceil(painted.pageWidth() * scale()))
                .orElse(0);
    }

    private int top(int page) {
        return Metric.GAP.px() + page * (pageHeight() + Metric.GAP.px());
    }

    private int left() {
        return Math.max(Metric.GAP.px(), (getWidth() - pageWidth()) / 2);
    }

    private Rectangle area(int page, Area area) {
        double scale = scale();
        return new Rectangle(
                left() + (int) Math.floor(area.x() * scale),
                top(page) + (int) Math.floor(area.y() * scale),
                (int) Math.ceil(area.width() * scale),
                (int) Math.ceil(area.height() * scale));
    }

    @Override
    public Dimension getPreferredSize() {
        int pages = document.map(PaintedDocument::pageCount).orElse(0);
        return new Dimension(pageWidth() + 2 * Metric.GAP.px(), top(pages));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Token.GROUND.colour());
        graphics.fillRect(0, 0, getWidth(), getHeight());
        document.ifPresent(painted -> paintPages((Graphics2D) graphics, painted));
    }

    private void paintPages(Graphics2D graphics, PaintedDocument painted) {
        Rectangle clip = graphics.getClipBounds();
        Rectangle seen = getVisibleRect();
        int first = -1;
        for (int page = 0; page < painted.pageCount(); page++) {
            Rectangle sheet = new Rectangle(left(), top(page), pageWidth(), pageHeight());
            if (sheet.intersects(seen) && first < 0) {
                first = page;
            }
            if (clip == null || sheet.intersects(clip)) {
                Graphics2D own = (Graphics2D) graphics.create();
                own.clip(sheet);
                own.setColor(paper());
                own.fill(sheet);
                own.translate(sheet.x, sheet.y);
                own.scale(scale(), scale());
                painted.paint(own, page, changed);
                own.dispose();
                frame(graphics, sheet, 1, Token.HAIRLINE);
            }
        }
        if (isFocusOwner()) {
            here().ifPresent(at -> {
                Rectangle ring = area(at.page(), at.number().area());
                ring.grow(Metric.HALF_STEP.px(), Metric.HALF_STEP.px());
                frame(graphics, ring, 2, Token.ACCENT);
            });
        }
        int page = Math.max(0, first);
        java.awt.EventQueue.invokeLater(() -> pageShown.accept(page));
    }

    /** Paper is paper in both themes; documents are painted in the light set. */
    private static Color paper() {
        return groupwright.documents.charts.Palette.PAPER.surface();
    }

    private static void frame(Graphics graphics, Rectangle at, int thickness, Token colour) {
        try (Drawing drawing = Drawing.on(graphics, at)) {
            drawing.frame(0, 0, drawing.width(), drawing.height(), thickness, colour);
        }
    }

    private Optional<Stop> at(Point point) {
        return stops.stream()
                .filter(candidate -> {
                    Rectangle area = area(candidate.page(), candidate.number().area());
                    area.grow(2, 2);
                    return area.contains(point);
                })
                .findFirst();
    }

    private Optional<PageLink> linkAt(Point point) {
        for (int page = 0; page < document.map(PaintedDocument::pageCount).orElse(0); page++) {
            for (PageLink link : document.get().linksOn(page)) {
                if (area(page, link.area()).contains(point)) {
                    return Optional.of(link);
                }
            }
        }
        return Optional.empty();
    }

    private final class Mouse extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            requestFocusInWindow();
            Optional<Stop> number = at(event.getPoint());
            if (number.isPresent()) {
                stop = stops.indexOf(number.get());
                repaint();
                chosen.accept(number.get().number().use());
                return;
            }
            linkAt(event.getPoint()).ifPresent(link -> goTo(link.page(), link.y()));
        }

        @Override
        public void mouseMoved(MouseEvent event) {
            boolean live =
                    at(event.getPoint()).isPresent() || linkAt(event.getPoint()).isPresent();
            setCursor(Cursor.getPredefinedCursor(live ? Cursor.HAND_CURSOR : Cursor.DEFAULT_CURSOR));
        }
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 2 * Metric.ROW.px();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return visible.height - Metric.ROW.px();
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return getParent() != null && getParent().getHeight() > getPreferredSize().height;
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
                    return accessibleHere();
                }
            };
        }
        return accessibleContext;
    }
}
