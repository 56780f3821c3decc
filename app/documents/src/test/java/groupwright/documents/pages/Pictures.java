package groupwright.documents.pages;

import groupwright.documents.trace.Use;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Set;

/** Painted pages as pictures. */
final class Pictures {
    private Pictures() {}

    static BufferedImage of(PaintedDocument document, int page, double scale, Set<Use> changed) {
        BufferedImage picture = new BufferedImage(
                (int) (document.pageWidth() * scale),
                (int) (document.pageHeight() * scale),
                BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, picture.getWidth(), picture.getHeight());
        graphics.scale(scale, scale);
        document.paint(graphics, page, changed);
        graphics.dispose();
        return picture;
    }
}
