package groupwright.workbench.cassettes;

import groupwright.documents.charts.ConceptSign;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.workbench.components.FocusBorder;
import groupwright.workbench.look.Drawing;
import groupwright.workbench.look.Look;
import java.awt.Graphics;
import java.awt.Insets;
import java.awt.Rectangle;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.ToolTipManager;

/** Cassettes as points of two measures. A click selects the nearest; Left and Right walk along the level axis. */
final class ScatterView extends JComponent implements Accessible {
    private static final long serialVersionUID = 1L;

    private final transient CassetteWords say;
    private final transient Consumer<Cassette> chosen;
    private transient Optional<ScatterPainting> painting = Optional.empty();

    ScatterView(CassetteWords say, Consumer<Cassette> chosen) {
        this.say = say;
        this.chosen = chosen;
        setName("scatter");
        setFocusable(true);
        setBorder(new FocusBorder());
        ToolTipManager.sharedInstance().registerComponent(this);
        Keys.bind(this, "LEFT", () -> walk(-1));
        Keys.bind(this, "RIGHT", () -> walk(1));
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
        addMouseListener(new MouseAdapter() {
            @Override
            public void mousePressed(MouseEvent event) {
                requestFocusInWindow();
                near(event).map(Candidate::cassette).ifPresent(chosen);
            }
        });
    }

    /** Shows what was found; a concept's sign marks the cassette of today. */
    void show(Shown next, ConceptSign sign, String today) {
        painting = Optional.of(new ScatterPainting(next, sign, today, say));
        getAccessibleContext().setAccessibleName(painting.get().title());
        getAccessibleContext().setAccessibleDescription(painting.get().description());
        repaint();
    }

    private Rectangle room() {
        Insets insets = getInsets();
        return new Rectangle(
                insets.left,
                insets.top,
                Math.max(1, getWidth() - insets.left - insets.right),
                Math.max(1, getHeight() - insets.top - insets.bottom));
    }

    private Optional<Candidate> near(MouseEvent event) {
        Rectangle room = room();
        double scale = Look.scale();
        return painting.flatMap(now -> now.nearest(
                (event.getX() - room.x) / scale,
                (event.getY() - room.y) / scale,
                room.width / scale,
                room.height / scale));
    }

    private void walk(int by) {
        painting.ifPresent(now -> {
            Measure across = now.shown().axes().across();
            List<Candidate> along = now.shown().finding().shown().stream()
                    .sorted(Comparator.comparingDouble(across::of))
                    .toList();
            int here = now.shown().chosen().map(along::indexOf).orElse(-1);
            int next = Math.max(0, Math.min(along.size() - 1, here + by));
            if (!along.isEmpty()) {
                chosen.accept(along.get(next).cassette());
            }
        });
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return near(event)
                .flatMap(candidate -> painting.map(now -> now.said(candidate)))
                .orElse(null); // Swing's word for no tip
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        painting.ifPresent(now -> {
            try (Drawing drawing = Drawing.on(graphics, room())) {
                now.paint(drawing);
            }
        });
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }
}
