package groupwright.workbench.form;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.RecordId;
import groupwright.workbench.Sample;
import groupwright.workbench.bench.FakeBench;
import groupwright.workbench.look.Look;
import groupwright.workbench.look.Theme;
import groupwright.workbench.look.Token;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.swing.JComponent;

/** Paints forms into files, for people to look at: arguments are a folder. */
public final class FormPictures {
    private FormPictures() {}

    /** Paints both themes. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (Theme theme : Theme.values()) {
            Look.setUp(theme, 1);
            for (String id : List.of("R-001", "G-002", "C-002")) {
                FakeBench bench = new FakeBench(Locale.UK, Sample.definition());
                RecordForm form = new RecordForm(bench, Catalogue.ofServices(), Arrangement.usual());
                form.show(new RecordId(id));
                bench.afterEachStep(form::refresh);
                if (id.equals("G-002")) {
                    type(form, "powerAllDay_W", "190");
                    type(form, "powerHour_W", "19o");
                }
                save(form, 856, folder.resolve(id + "-" + theme + ".png"));
            }
        }
    }

    /** A sheet painted over a ground. */
    public static void save(JComponent component, int width, int height, Path file) throws IOException {
        component.setSize(width, height);
        layOut(component);
        write(component, file);
    }

    private static void type(RecordForm form, String field, String text) {
        FieldRow row = form.body().row(List.of(field)).orElseThrow();
        row.resume(text);
        row.commit();
    }

    static void save(JComponent component, int width, Path file) throws IOException {
        component.setSize(width, 10);
        layOut(component);
        component.setSize(width, component.getPreferredSize().height);
        layOut(component);
        write(component, file);
    }

    private static void write(JComponent component, Path file) throws IOException {
        int width = component.getWidth();
        int margin = 16;
        BufferedImage image =
                new BufferedImage(width + 2 * margin, component.getHeight() + 2 * margin, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(Token.SURFACE.colour());
        graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
        graphics.translate(margin, margin);
        component.print(graphics);
        graphics.dispose();
        ImageIO.write(image, "png", file.toFile());
    }

    static void layOut(Container container) {
        container.doLayout();
        for (Component part : container.getComponents()) {
            if (part instanceof Container inner) {
                layOut(inner);
            }
        }
    }
}
