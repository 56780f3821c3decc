package groupwright.workbench.shell;

import groupwright.workbench.components.ActionLink;
import groupwright.workbench.look.Metric;
import groupwright.workbench.look.Token;
import groupwright.workbench.look.Words;
import groupwright.workbench.ripple.RipplePanel;
import groupwright.workbench.workings.StackLayout;
import groupwright.workbench.workings.WorkingsPanel;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Lays the parts of the window out: bar above, rail left, place in the middle, workings right, ripple line below. */
final class Content extends JPanel {
    private final transient Words words;
    private final JPanel middle = new JPanel(new BorderLayout());
    private final JPanel notices = new JPanel(new StackLayout(0));
    private final JPanel side = new JPanel(new BorderLayout());
    private final JPanel folded = new JPanel(new BorderLayout());
    private final Rail rail;
    private final WorkingsPanel workings;
    private int sideWidth;
    private Fold fold = Fold.AS_THE_WINDOW_IS_WIDE;

    /** Whether Workings is folded to its edge. */
    private enum Fold {
        AS_THE_WINDOW_IS_WIDE,
        OPEN,
        FOLDED
    }

    Content(
            Words words,
            TopBar bar,
            Rail rail,
            JComponent problems,
            JComponent work,
            WorkingsPanel workings,
            RipplePanel ripple) {
        super(new BorderLayout());
        this.words = words;
        this.rail = rail;
        this.workings = workings;
        this.sideWidth = Metric.WORKINGS.px();
        notices.setOpaque(false);
        notices.add(problems);
        notices.add(work);
        middle.add(notices, BorderLayout.NORTH);
        buildSide();
        JPanel body = new JPanel(new BorderLayout());
        body.add(rail, BorderLayout.LINE_START);
        body.add(middle, BorderLayout.CENTER);
        body.add(side, BorderLayout.LINE_END);
        add(bar, BorderLayout.NORTH);
        add(body, BorderLayout.CENTER);
        add(ripple, BorderLayout.SOUTH);
        addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                rail.resized();
                bar.resized();
                refold();
            }
        });
        refold();
    }

    private void buildSide() {
        ActionLink unfold = new ActionLink("‹", this::toggleWorkings);
        unfold.setName("workings.unfold");
        unfold.setToolTipText(words.text("workings.unfold"));
        unfold.getAccessibleContext().setAccessibleName(words.text("workings.unfold"));
        folded.setName("workings.folded");
        folded.setBorder(BorderFactory.createEmptyBorder(Metric.GAP.px(), Metric.STEP.px(), 0, 0));
        folded.add(unfold, BorderLayout.NORTH);
        folded.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent event) {
                toggleWorkings();
            }
        });
        side.add(new SideEdge(this::widen), BorderLayout.LINE_START);
    }

    private void widen(int by) {
        sideWidth = Math.max(Metric.WORKINGS_LEAST.px(), Math.min(Metric.WORKINGS_MOST.px(), sideWidth + by));
        refold();
    }

    /** Opens Workings or folds it. */
    void toggleWorkings() {
        fold = isFolded() ? Fold.OPEN : Fold.FOLDED;
        refold();
    }

    boolean isFolded() {
        return switch (fold) {
            case OPEN -> false;
            case FOLDED -> true;
            case AS_THE_WINDOW_IS_WIDE -> getWidth() > 0 && getWidth() < Metric.FOLD_WIDTH.px();
        };
    }

    private void refold() {
        JComponent shown = isFolded() ? folded : workings;
        JComponent hidden = isFolded() ? workings : folded;
        side.remove(hidden);
        if (shown.getParent() != side) {
            side.add(shown, BorderLayout.CENTER);
        }
        int width = isFolded() ? Metric.WORKINGS_FOLDED.px() : sideWidth;
        side.setPreferredSize(new Dimension(width, 1));
        revalidate();
        repaint();
    }

    /** Puts a place in the middle. */
    void show(JComponent place) {
        for (java.awt.Component child : middle.getComponents()) {
            if (child != notices && child != place) {
                middle.remove(child);
            }
        }
        if (place.getParent() != middle) {
            middle.add(place, BorderLayout.CENTER);
        }
        middle.revalidate();
        middle.repaint();
        rail.resized();
    }

    @Override
    public Color getBackground() {
        return words == null ? super.getBackground() : Token.SURFACE.colour();
    }
}
