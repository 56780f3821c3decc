package groupwright.workbench.documents;

import groupwright.documents.pages.Area;
import groupwright.documents.pages.PageLink;
import groupwright.documents.pages.PaintedDocument;
import groupwright.documents.pages.PaintedHeading;
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
 * opens the workings of one; Up and Down walk from heading to heading, Enter opens the template there; a click does the same.
 */
final class PagesView extends JComponent implements Scrollable, Accessible {
    private static final double WIDEST = 1.6; // pixels for a point at 100 %
    private static final double RING = 2;
    private static final int INCH = 72;
    private static final int PIXELS = 96;

    private final transient Consumer<Use> chosen;
    private final transient IntConsumer opened;
    private final transient IntConsumer pageShown;
    private transient Optional<PaintedDocument> document = Optional.empty();
    private transient Set<Use> changed = Set.of();
    private transient List<NumberStop> numbers = List.of();
    private transient List<HeadingStop> headings = List.of();
    private transient Optional<Stop> here = Optional.empty();
    private String name = "";

    /** What one can walk to. */
    private sealed interface Stop {
        int page();

        Area area();

        String title();
    }

    private record NumberStop(int page, PaintedNumber number) implements Stop {
        @Override
        public Area area() {
            return number.area();
        }

        @Override
        public String title() {
            return number.entry().entry().title() + ", " + number.shown();
        }
    }

    /** A heading of the template. */
    private record HeadingStop(int page, PaintedHeading heading, int line) implements Stop {
        @Override
        public Area area() {
            return heading.area();
        }

        @Override
        public String title() {
            return heading.title();
        }
    }

    /**
     * @param chosen told which number was clicked
     * @param opened told the line of the template, from 1, whose heading was clicked
     * @param pageShown told which page is in sight, from 0
     */
    PagesView(Consumer<Use> chosen, IntConsumer opened, IntConsumer pageShown) {
        this.chosen = chosen;
        this.opened = opened;
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
        key("RIGHT", () -> walk(numbers, 1));
        key("LEFT", () -> walk(numbers, -1));
        key("DOWN", () -> walk(headings, 1));
        key("UP", () -> walk(headings, -1));
        key("ENTER", () -> here.ifPresent(this::follow));
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
        boolean other = !title.equals(name);
        document = Optional.of(next);
        changed = marked;
        name = title;
        List<NumberStop> foundNumbers = new ArrayList<>();
        List<HeadingStop> foundHeadings = new ArrayList<>();
        for (int i = 0; i < next.pageCount(); i++) {
            int page = i;
            next.numbersOn(page).forEach(number -> foundNumbers.add(new NumberStop(page, number)));
            next.headingsOn(page)
                    .forEach(heading ->
                            heading.line().ifPresent(line -> foundHeadings.add(new HeadingStop(page, heading, line))));
        }
        here = other ? Optional.empty() : here.flatMap(at -> again(at, foundNumbers, foundHeadings));
        numbers = List.copyOf(foundNumbers);
        headings = List.copyOf(foundHeadings);
        if (other) {
            scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        }
        revalidate();
        repaint();
    }

    Optional<PaintedDocument> document() {
        return document;
    }

    /** The same stop, counted from the start, in the document made anew. */
    private Optional<Stop> again(Stop at, List<NumberStop> nextNumbers, List<HeadingStop> nextHeadings) {
        List<? extends Stop> before = at instanceof NumberStop ? numbers : headings;
        List<? extends Stop> after = at instanceof NumberStop ? nextNumbers : nextHeadings;
        int index = before.indexOf(at);
        return index >= 0 && index < after.size() ? Optional.of(after.get(index)) : Optional.empty();
    }

    /** Goes to the next number that is marked as changed; back to the first behind the last. */
    void nextChange() {
        int from = here.map(numbers::indexOf).orElse(-1);
        for (int i = 1; i <= numbers.size(); i++) {
            NumberStop next = numbers.get(Math.floorMod(from + i, numbers.size()));
            if (changed.contains(next.number().use())) {
                requestFocusInWindow();
                stand(next);
                return;
            }
        }
    }

    /** Goes to the last heading that begins at a line of the template or before it; without one to the first page. */
    void goToLine(int line) {
        requestFocusInWindow();
        Optional<HeadingStop> nearest = headings.stream()
                .filter(heading -> heading.line() <= line)
                .reduce((best, next) -> next.line() >= best.line() ? next : best);
        here = nearest.map(heading -> heading);
        if (nearest.isPresent()) {
            goTo(nearest.get().page(), nearest.get().area().y());
        } else {
            goTo(0, 0);
        }
        tell();
        repaint();
    }

    private void follow(Stop at) {
        if (at instanceof NumberStop number) {
            chosen.accept(number.number().use());
        } else if (at instanceof HeadingStop heading) {
            opened.accept(heading.line());
        }
    }

    private void walk(List<? extends Stop> stops, int by) {
        if (!stops.isEmpty()) {
            int at = here.map(stops::indexOf).orElse(-1);
            stand(stops.get(at < 0 ? nearest(stops) : Math.floorMod(at + by, stops.size())));
        }
    }

    private void stand(Stop at) {
        here = Optional.of(at);
        scrollTo(at);
        tell();
    }

    private void tell() {
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, null, accessibleHere());
    }

    private String accessibleHere() {
        return here.map(Stop::title).orElse(name);
    }

    /** The first in sight; where there is none, the first. */
    private int nearest(List<? extends Stop> stops) {
        Rectangle seen = getVisibleRect();
        for (int i = 0; i < stops.size(); i++) {
            if (seen.intersects(area(stops.get(i).page(), stops.get(i).area()))) {
                return i;
            }
        }
        return 0;
    }

    private void scrollTo(Stop to) {
        Rectangle area = area(to.page(), to.area());
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
            here.ifPresent(at -> {
                Rectangle ring = area(at.page(), at.area());
                ring.grow(Metric.HALF_STEP.px(), Metric.HALF_STEP.px());
                ring(graphics, ring);
            });
        }
        int page = Math.max(0, first);
        java.awt.EventQueue.invokeLater(() -> pageShown.accept(page));
    }

    /** Paper is paper in both themes; documents are painted in the light set. */
    private static Color paper() {
        return groupwright.documents.charts.Palette.PAPER.surface();
    }

    /** The focus on paper is as light as the paper, whatever the theme. */
    private static void ring(Graphics graphics, Rectangle at) {
        graphics.setColor(groupwright.documents.charts.Palette.PAPER.accent());
        for (int i = 0; i < Look.pixels(RING); i++) {
            graphics.drawRect(at.x + i, at.y + i, at.width - 2 * i - 1, at.height - 2 * i - 1);
        }
    }

    private static void frame(Graphics graphics, Rectangle at, int thickness, Token colour) {
        try (Drawing drawing = Drawing.on(graphics, at)) {
            drawing.frame(0, 0, drawing.width(), drawing.height(), thickness, colour);
        }
    }

    private Optional<Stop> at(Point point) {
        Optional<Stop> number = at(numbers, point);
        return number.isPresent() ? number : at(headings, point);
    }

    private Optional<Stop> at(List<? extends Stop> stops, Point point) {
        for (Stop candidate : stops) {
            Rectangle area = area(candidate.page(), candidate.area());
            area.grow(2, 2);
            if (area.contains(point)) {
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
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
            Optional<Stop> stop = at(event.getPoint());
            if (stop.isPresent()) {
                here = stop;
                repaint();
                follow(stop.get());
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
