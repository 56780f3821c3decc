package groupwright.workbench.components;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Objects;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.swing.TransferHandler;

/** A number one can ask: a click or Enter opens its workings; copying and dragging give value, unit and figure. */
public final class FigureChip extends PaintedView<Chip> {
    private transient boolean pointed;
    private transient boolean dragging;

    /**
     * A chip.
     *
     * @param opened opens the workings
     */
    public FigureChip(Chip chip, Runnable opened) {
        super(ChipPainter.ALONE, chip, AccessibleRole.HYPERLINK);
        Objects.requireNonNull(opened, "opened");
        Press.install(this, opened);
        setTransferHandler(new ChipTransfer());
        Press.bindCopy(
                this,
                () -> getTransferHandler()
                        .exportToClipboard(this, getToolkit().getSystemClipboard(), TransferHandler.COPY));
        MouseAdapter pointer = new Pointer();
        addMouseListener(pointer);
        addMouseMotionListener(pointer);
    }

    @Override
    Chip painted() {
        Chip chip = value();
        return pointed && chip.line() != Chip.Line.SELECTED ? chip.at(Chip.Line.HOVER) : chip;
    }

    @Override
    void addStates(AccessibleStateSet states) {
        if (value().line() == Chip.Line.SELECTED) {
            states.add(AccessibleState.SELECTED);
        }
    }

    @Override
    public String getToolTipText(MouseEvent event) {
        return value().tip().isEmpty() ? super.getToolTipText(event) : value().tip();
    }

    private final class Pointer extends MouseAdapter {
        @Override
        public void mouseEntered(MouseEvent event) {
            pointed = true;
            repaint();
        }

        @Override
        public void mouseExited(MouseEvent event) {
            pointed = false;
            repaint();
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            if (!dragging) {
                dragging = true;
                getTransferHandler().exportAsDrag(FigureChip.this, event, TransferHandler.COPY);
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            dragging = false;
        }

        @Override
        public void mousePressed(MouseEvent event) {
            dragging = false;
        }
    }
}
