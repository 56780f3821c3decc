package groupwright.workbench;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** Paints components without a display. */
public final class Picture {
    private Picture() {}

    /** A component at a size, painted so many times as large. */
    public static BufferedImage of(Component component, int width, int height, double scale) {
        component.setSize(width, height);
        layOut(component);
        layOut(component); // texts know their height only once they have their width
        BufferedImage image = new BufferedImage(
                (int) Math.ceil(width * scale), (int) Math.ceil(height * scale), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.scale(scale, scale);
        component.print(graphics);
        graphics.dispose();
        return image;
    }

    private static void layOut(Component component) {
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }

    /** Keeps a picture to be looked at, where the system property {@code groupwright.pictures} names a folder. */
    public static void keep(BufferedImage image, String name) {
        String folder = System.getProperty("groupwright.pictures", "");
        if (!folder.isEmpty()) {
            try {
                Files.createDirectories(Path.of(folder));
                ImageIO.write(image, "png", Path.of(folder, name + ".png").toFile());
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
    }
}
