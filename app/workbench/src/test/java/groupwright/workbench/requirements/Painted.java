package groupwright.workbench.requirements;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Definition;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;

/** A place painted into a picture, without a window. */
final class Painted {
    final FakeBench bench;
    final RequirementsPlace place;
    final RequirementsView view;

    private Painted(FakeBench bench, RequirementsPlace place) {
        this.bench = bench;
        this.place = place;
        this.view = (RequirementsView) place.component();
    }

    static Painted of(Definition definition, Theme theme, double scale) throws Exception {
        Painted[] made = new Painted[1];
        SwingUtilities.invokeAndWait(() -> {
            Look.setUp(theme, scale);
            FakeBench bench = new FakeBench(definition);
            RequirementsPlace place = new RequirementsPlace(bench, Catalogue.ofServices());
            bench.show(place);
            made[0] = new Painted(bench, place);
        });
        return made[0];
    }

    /** Lays out and paints at a size in pixels of a screen at 100 %. */
    BufferedImage at(int width, int height) throws Exception {
        int w = Look.pixels(width);
        int h = Look.pixels(height);
        BufferedImage[] image = new BufferedImage[1];
        SwingUtilities.invokeAndWait(() -> {
            view.setSize(w, h);
            for (int i = 0; i < 4; i++) { // texts that are broken into lines know their height after their width
                layOut(view);
            }
            image[0] = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = image[0].createGraphics();
            RepaintManager.currentManager(view).setDoubleBufferingEnabled(false);
            view.paint(graphics); // printing would leave out the selection
            graphics.dispose();
        });
        return image[0];
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    /** The first component inside whose accessible name is this, or nothing. */
    static Optional<Component> named(Container in, String name) {
        for (Component child : in.getComponents()) {
            if (child.isVisible()
                    && child.getAccessibleContext() != null
                    && name.equals(child.getAccessibleContext().getAccessibleName())) {
                return Optional.of(child);
            }
            if (child instanceof Container inner && named(inner, name).isPresent()) {
                return named(inner, name);
            }
        }
        return Optional.empty();
    }
}
