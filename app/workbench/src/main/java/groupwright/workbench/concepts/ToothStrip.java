package groupwright.workbench.concepts;

import groupwright.workbench.lists.Keys;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/**
 * The wheels of one row, one of which one stands on. Left and Right walk, Up and Down change it by a tooth, Insert and
 * Delete add and remove one, Enter or a digit types the whole row.
 */
final class ToothStrip extends JComponent implements Accessible {
    private static final long serialVersionUID = 1L;
    private static final double GAP = 12;
    private static final double RING = 2;

    private final transient ToothRow row;
    private final transient Teeth teeth;
    private final transient Runnable typing;
    private final transient Optional<IntFunction<Rectangle2D>> places;
    private transient List<Integer> shown = List.of();
    private int here;
    private int pointed = -1;

    /** A strip that writes its own numbers. */
    ToothStrip(ToothRow row, Teeth teeth, Runnable typing) {
        this(row, teeth, typing, Optional.empty());
    }

    /**
     * A strip over numbers that something else has written.
     *
     * @param places where they stand, at 100 %
     */
    ToothStrip(ToothRow row, Teeth teeth, Runnable typing, IntFunction<Rectangle2D> places) {
        this(row, teeth, typing, Optional.of(places));
    }

    private ToothStrip(ToothRow row, Teeth teeth, Runnable typing, Optional<IntFunction<Rectangle2D>> places) {
        this.row = row;
        this.teeth = teeth;
        this.typing = typing;
        this.places = places;
        setFocusable(true);
        setName("strip " + row.field() + " " + teeth.concept());
        setToolTipText(teeth.words().text("teeth.help"));
        setCursor(Cursor.getPredefinedCursor(Cursor.HAND_CURSOR));
        bindKeys();
        Pointer pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
        addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent gained) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent lost) {
                repaint();
            }
        });
    }

    private void bindKeys() {
        Keys.bind(this, "LEFT", () -> go(here - 1));
        Keys.bind(this, "RIGHT", () -> go(here + 1));
        Keys.bind(this, "HOME", () -> go(0));
        Keys.bind(this, "END", () -> go(shown.size() - 1));
        Keys.bind(this, "UP", () -> nudge(1));
        Keys.bind(this, "DOWN", () -> nudge(-1));
        Keys.bind(this, "INSERT", () -> change(row::insert));
        Keys.bind(this, "DELETE", () -> change(row::remove));
        Keys.bind(this, "BACK_SPACE", () -> change(row::remove));
        Keys.bind(this, "ENTER", typing);
        Keys.bind(this, "F2", typing);
        addKeyListener(new KeyAdapter() {
            @Override
            public void keyTyped(KeyEvent typed) {
                switch (typed.getKeyChar()) {
                    case '+' -> nudge(1);
                    case '-', '\u2212' -> nudge(-1);
                    default -> {
                        if (Character.isDigit(typed.getKeyChar())) {
                            typing.run();
                        }
                    }
                }
            }
        });
    }

    private void nudge(int by) {
        change((now, place) -> row.nudge(now, place, by));
    }

    /** One stands on the wheel that was changed or added, or on the one behind that removed. */
    private void change(BiFunction<List<Integer>, Integer, ToothRow.Outcome> change) {
        if (shown.isEmpty()) {
            return;
        }
        int place = here;
        if (change.apply(shown, place) instanceof ToothRow.Changed changed) {
            here = changed.focus();
        }
        teeth.edit(row, now -> change.apply(now, Math.min(place, now.size() - 1)));
    }

    private void go(int place) {
        if (place < 0 || place >= shown.size()) {
            return;
        }
        String before = name();
        here = place;
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, before, name());
        repaint();
    }

    /** Shows a row. */
    void show(List<Integer> next) {
        if (next.equals(shown)) {
            return;
        }
        String before = name();
        shown = List.copyOf(next);
        here = Math.max(0, Math.min(here, shown.size() - 1));
        getAccessibleContext().firePropertyChange(AccessibleContext.ACCESSIBLE_NAME_PROPERTY, before, name());
        revalidate();
        repaint();
    }

    /** The place one stands on, from 0. */
    int here() {
        return here;
    }

    private Rectangle2D room(int place) {
        if (places.isPresent()) {
            return places.get().apply(place);
        }
        double left = 0;
        for (int i = 0; i < place; i++) {
            left += width(i);
        }
        return new Rectangle2D.Double(left, 0, width(place), Metric.HIT.units());
    }

    private double width(int place) {
        return Math.max(Metric.HIT.units(), Type.TABLE.width(text(place), Weight.REGULAR) + GAP);
    }

    private String text(int place) {
        return Integer.toString(shown.get(place));
    }

    @Override
    public Dimension getPreferredSize() {
        double width = 0;
        for (int i = 0; i < shown.size(); i++) {
            width += width(i);
        }
        return new Dimension(Look.pixels(width), Metric.HIT.px());
    }

    /** Between the wheels, what lies below gets the pointer. */
    @Override
    public boolean contains(int x, int y) {
        return places.isEmpty() ? super.contains(x, y) : super.contains(x, y) && at(x, y) >= 0;
    }

    private int at(int x, int y) {
        for (int i = 0; i < shown.size(); i++) {
            if (room(i).contains(x / Look.scale(), y / Look.scale())) {
                return i;
            }
        }
        return -1;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(0, 0, getWidth(), getHeight()))) {
            for (int i = 0; i < shown.size(); i++) {
                paintWheel(drawing, i, room(i));
            }
        }
    }

    private void paintWheel(Drawing drawing, int place, Rectangle2D room) {
        if (places.isEmpty()) {
            String text = text(place);
            double x = room.getX() + (room.getWidth() - Type.TABLE.width(text, Weight.REGULAR)) / 2;
            drawing.text(text, x, Type.TABLE.baseline(room.getHeight() / 2), Type.TABLE, Weight.REGULAR, Token.INK);
        }
        if (place == here && isFocusOwner()) {
            drawing.frame(room.getX(), room.getY(), room.getWidth(), room.getHeight(), RING, Token.ACCENT);
        } else if (place == pointed) {
            drawing.level(room.getX() + RING, room.getMaxX() - RING, room.getMaxY() - 1, 1, Token.ACCENT);
        }
    }

    private String name() {
        return shown.isEmpty()
                ? teeth.words().text(row.field() + ".label")
                : teeth.words()
                        .text(
                                row.field() + ".here",
                                text(Math.min(here, shown.size() - 1)),
                                Integer.toString(Math.min(here + 1, shown.size())),
                                Integer.toString(shown.size()),
                                teeth.concept());
    }

    private final class Pointer extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent pressed) {
            requestFocusInWindow();
            go(at(pressed.getX(), pressed.getY()));
        }

        @Override
        public void mouseClicked(MouseEvent clicked) {
            if (clicked.getClickCount() == 2) {
                typing.run();
            }
        }

        @Override
        public void mouseMoved(MouseEvent moved) {
            point(at(moved.getX(), moved.getY()));
        }

        @Override
        public void mouseExited(MouseEvent exited) {
            point(-1);
        }

        private void point(int place) {
            pointed = place;
            repaint();
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleStrip();
        }
        return accessibleContext;
    }

    private final class AccessibleStrip extends AccessibleJComponent {
        private static final long serialVersionUID = 1L;

        @Override
        public String getAccessibleName() {
            return name();
        }

        @Override
        public String getAccessibleDescription() {
            return teeth.words().text("teeth.help");
        }

        @Override
        public AccessibleRole getAccessibleRole() {
            return AccessibleRole.SPIN_BOX;
        }
    }
}
