package groupwright.workbench.bikes;

import groupwright.workbench.look.Look;
import groupwright.workbench.look.Token;
import java.awt.Color;
import java.util.function.IntSupplier;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;

/** Two things below each other: the upper one as high as it wants to be, where that leaves room for the lower one. */
final class SharedHeight extends JSplitPane {
    private static final long serialVersionUID = 1L;
    private static final double USUAL_BELOW = 250;
    private static final double LEAST_ABOVE = 130;
    /** More of the height the lower one does not get. */
    private static final double MOST_BELOW = 0.45;

    private final transient IntSupplier wantedBelow;
    private boolean placing;
    private boolean movedByHand;

    /** @param wantedBelow how high the lower one would like to be, in pixels */
    SharedHeight(JComponent above, JComponent below, IntSupplier wantedBelow) {
        super(VERTICAL_SPLIT, above, below);
        this.wantedBelow = wantedBelow;
        setBorder(BorderFactory.createEmptyBorder());
        setOpaque(false);
        setContinuousLayout(true);
        setResizeWeight(1);
        addPropertyChangeListener(DIVIDER_LOCATION_PROPERTY, event -> movedByHand |= !placing && isShowing());
    }

    @Override
    public void doLayout() {
        if (!movedByHand && getHeight() > 0) {
            placing = true;
            int below = Math.min(
                    (int) (MOST_BELOW * getHeight()), Math.max(Look.pixels(USUAL_BELOW), wantedBelow.getAsInt()));
            int most = getHeight() - getDividerSize() - below;
            int wanted = getTopComponent().getPreferredSize().height;
            int place = Math.max(Look.pixels(LEAST_ABOVE), Math.min(wanted, most));
            if (place != getDividerLocation()) {
                setDividerLocation(place);
            }
            super.doLayout();
            placing = false;
            return;
        }
        super.doLayout();
    }

    @Override
    public Color getBackground() {
        return Token.SURFACE.colour();
    }
}
