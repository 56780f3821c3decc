package groupwright.workbench.concepts;

import groupwright.workbench.look.Token;
import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A place painted without a window. */
record Shot(BufferedImage image, int scale) {
    private static final int LIKE = 24;

    static Shot of(Component component, int width, int height, int scale) {
        component.setSize(width, height);
        for (int pass = 0; pass < 4; pass++) { // heights follow from widths, and without a window nobody asks again
            invalidate(component);
            layOut(component);
        }
        BufferedImage image = new BufferedImage(width * scale, height * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Token.SURFACE.colour());
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.scale(scale, scale);
        component.print(graphics);
        graphics.dispose();
        return new Shot(image, scale);
    }

    private static void layOut(Component component) {
        component.doLayout();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                layOut(child);
            }
        }
    }

    private static void invalidate(Component component) {
        component.invalidate();
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                invalidate(child);
            }
        }
    }

    /** Keeps it to be looked at, where the system property {@code groupwright.pictures} names a folder. */
    Shot keep(String name) {
        String folder = System.getProperty("groupwright.pictures", "");
        if (!folder.isEmpty()) {
            try {
                Files.createDirectories(Path.of(folder));
                ImageIO.write(image, "png", Path.of(folder, name + ".png").toFile());
            } catch (IOException broken) {
                throw new UncheckedIOException(broken);
            }
        }
        return this;
    }

    /** How many pixels have nearly this colour, in squared lengths of 100 %. */
    double area(Token colour) {
        Color wanted = colour.colour();
        int count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                Color found = new Color(image.getRGB(x, y));
                int away = Math.abs(found.getRed() - wanted.getRed())
                        + Math.abs(found.getGreen() - wanted.getGreen())
                        + Math.abs(found.getBlue() - wanted.getBlue());
                count += away <= LIKE ? 1 : 0;
            }
        }
        return count / (double) (scale * scale);
    }
}
