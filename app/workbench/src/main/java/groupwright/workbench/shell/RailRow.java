package groupwright.workbench.shell;

import groupwright.workbench.bench.PlaceName;
import groupwright.workbench.components.Mark;
import groupwright.workbench.components.VerdictMark;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Type;
import groupwright.workbench.look.Weight;
import groupwright.workbench.look.Words;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.swing.JComponent;

/** One place on the rail, with its piece of the spine. */
final class RailRow extends JComponent implements Accessible {
    private static final double SPINE = 20;
    private static final double LONG_TICK = 6;
    private static final double SHORT_TICK = 3;
    private static final double WORD = 40;
    private static final double HERE_THICKNESS = 3;

    /** Where a place stands among those of its stage. */
    enum Position {
        FIRST,
        INNER,
        LAST,
        ONLY;

        boolean startsStage() {
            return this == FIRST || this == ONLY;
        }

        boolean endsStage() {
            return this == LAST || this == ONLY;
        }
    }

    private final PlaceName place;
    private final String word;
    private final transient VerdictMark mark;
    private final Position position;
    private final transient Runnable go;
    private int open;
    private boolean here;
    private boolean changed;
    private boolean narrow;

    RailRow(PlaceName place, Words words, Position position, Runnable go) {
        this.place = place;
        this.word = words.text("place." + place);
        this.mark = new VerdictMark(words.locale());
        this.position = position;
        this.go = go;
        setName("rail." + place);
        setFocusable(true);
        setAlignmentX(LEFT_ALIGNMENT);
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                go.run();
            }
        });
        addFocusListener(new FocusListener() {
            @Override
            public void focusGained(FocusEvent event) {
                repaint();
            }

            @Override
            public void focusLost(FocusEvent event) {
                repaint();
            }
        });
    }

    PlaceName place() {
        return place;
    }

    /** Goes to the place. */
    void choose() {
        go.run();
    }

    void show(int things, boolean isHere, boolean isChanged, boolean isNarrow) {
        open = things;
        here = isHere;
        changed = isChanged;
        narrow = isNarrow;
        setToolTipText(null);
        repaint();
    }

    boolean isHere() {
        return here;
    }

    boolean isChanged() {
        return changed;
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Metric.RAIL.px(), Metric.RAIL_ROW.px());
    }

    @Override
    public Dimension getMaximumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        try (Drawing drawing = Drawing.on(graphics, new Rectangle(getWidth(), getHeight()))) {
            double height = drawing.height();
            double middle = height / 2;
            if (here) {
                drawing.box(
                        Metric.RAIL_ROW.units(), 0, drawing.width() - Metric.RAIL_ROW.units(), height, Token.SURFACE);
            }
            paintSpine(drawing, height);
            if (changed) {
                double half = VerdictMark.SIZE / 2;
                try (Drawing patch = drawing.part(SPINE - half, middle - half, 2 * half, 2 * half)) {
                    mark.paint(patch, Mark.CHANGED);
                }
            }
            Weight weight = here ? Weight.STRONG : Weight.REGULAR;
            drawing.text(word, WORD, Type.BODY.baseline(middle), Type.BODY, weight, Token.INK);
            if (open > 0 && !narrow) {
                drawing.textUpTo(
                        Integer.toString(open),
                        drawing.width() - Metric.GAP.units(),
                        Type.SECONDARY.baseline(middle),
                        Type.SECONDARY,
                        Weight.REGULAR,
                        Token.MUTED);
            }
            if (isFocusOwner()) {
                drawing.frame(
                        Metric.RAIL_ROW.units() + 1,
                        1,
                        drawing.width() - Metric.RAIL_ROW.units() - 2,
                        height - 2,
                        2,
                        Token.ACCENT);
            }
        }
    }

    private void paintSpine(Drawing drawing, double height) {
        if (here) {
            drawing.upright(SPINE - HERE_THICKNESS / 2, 0, height, HERE_THICKNESS, Token.ACCENT);
            drawing.level(SPINE - LONG_TICK, SPINE + LONG_TICK, 0, 2, Token.ACCENT);
            drawing.level(SPINE - LONG_TICK, SPINE + LONG_TICK, height - 2, 2, Token.ACCENT);
            return;
        }
        drawing.upright(SPINE - 0.5, 0, height, 1, Token.EDGE);
        double top = position.startsStage() ? LONG_TICK : SHORT_TICK;
        drawing.level(SPINE - top, SPINE + top, 0, 1, Token.EDGE);
        if (position.endsStage()) {
            drawing.level(SPINE - LONG_TICK, SPINE + LONG_TICK, height - 1, 1, Token.EDGE);
        }
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.PAGE_TAB;
                }

                @Override
                public String getAccessibleName() {
                    return open > 0 ? word + ", " + open : word;
                }

                @Override
                public AccessibleStateSet getAccessibleStateSet() {
                    AccessibleStateSet states = super.getAccessibleStateSet();
                    if (here) {
                        states.add(AccessibleState.SELECTED);
                    }
                    return states;
                }
            };
        }
        return accessibleContext;
    }
}
