package groupwright.workbench.components;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import javax.imageio.ImageIO;
import javax.swing.JComponent;
import javax.swing.TransferHandler;

/** Gives a chart as a picture when it is copied: as an image for programs of this kind, and as PNG. */
final class PictureTransfer extends TransferHandler {
    static final DataFlavor PNG = new DataFlavor("image/png; class=java.io.InputStream", "PNG");

    @Override
    public int getSourceActions(JComponent component) {
        return COPY;
    }

    @Override
    protected Transferable createTransferable(JComponent component) {
        return new Picture(((ChartView) component).picture());
    }

    private record Picture(BufferedImage image) implements Transferable {
        private static final List<DataFlavor> FLAVORS = List.of(DataFlavor.imageFlavor, PNG);

        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return FLAVORS.toArray(DataFlavor[]::new);
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return FLAVORS.contains(flavor);
        }

        /** Gives an {@link Image} or an {@link InputStream}. */
        @Override
        public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException, IOException {
            if (DataFlavor.imageFlavor.equals(flavor)) {
                return image;
            }
            if (!PNG.equals(flavor)) {
                throw new UnsupportedFlavorException(flavor);
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, "png", bytes);
            return new ByteArrayInputStream(bytes.toByteArray());
        }
    }
}
