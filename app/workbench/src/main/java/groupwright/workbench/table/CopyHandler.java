package groupwright.workbench.table;

import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Copies rows as text. */
final class CopyHandler extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final transient Supplier<String> text;

    CopyHandler(Supplier<String> text) {
        this.text = text;
    }

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        return new StringSelection(text.get());
    }
}
