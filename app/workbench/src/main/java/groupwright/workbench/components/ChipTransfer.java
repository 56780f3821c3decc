package groupwright.workbench.components;

import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Gives what a chip says when it is copied or dragged. */
final class ChipTransfer extends TransferHandler {
    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        return new StringSelection(((FigureChip) component).value().copy());
    }
}
