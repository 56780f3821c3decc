package groupwright.workbench.look;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;

/** How strongly things are set apart. */
public enum Contrast {
    USUAL,
    /** Hairlines are as strong as the edges of fields. */
    HIGH;

    /** What the system asks for; {@link #USUAL} where it does not say or there is no display. */
    public static Contrast ofSystem() {
        if (GraphicsEnvironment.isHeadless()) {
            return USUAL;
        }
        Object high = Toolkit.getDefaultToolkit().getDesktopProperty("win.highContrast.on"); // only one system tells
        return Boolean.TRUE.equals(high) ? HIGH : USUAL;
    }
}
