package groupwright.workbench.look;

import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.fonts.inter.FlatInterFont;
import com.formdev.flatlaf.fonts.jetbrains_mono.FlatJetBrainsMonoFont;
import com.formdev.flatlaf.util.UIScale;
import groupwright.documents.charts.Lettering;
import groupwright.documents.charts.ScreenLettering;
import java.awt.Font;
import java.util.Map;
import java.util.Objects;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;

/** The look of all windows. What is set lives in {@link UIManager}, nothing in here. */
public final class Look {
    /** Least and most that everything can be enlarged. */
    public static final double LEAST_SCALE = 1.0;

    public static final double MOST_SCALE = 2.0;

    private static final String DEFAULT_FONT = "defaultFont";
    private static final String LETTERING = "Gw.lettering";
    /** FlatLaf reads it whenever a look is set up. */
    private static final String SCALE_PROPERTY = "flatlaf.uiScale";

    private Look() {}

    /** Sets the look with the contrast the system asks for; see {@link #setUp(Theme, double, Contrast)}. */
    public static void setUp(Theme theme, double scale) {
        setUp(theme, scale, Contrast.ofSystem());
    }

    /**
     * Sets the look, also of windows that are open. Call it on the event thread.
     *
     * @param scale from {@link #LEAST_SCALE} to {@link #MOST_SCALE}, on top of what the system enlarges
     * @throws IllegalArgumentException if the scale lies outside
     * @throws IllegalStateException if Java refuses the look or the font
     */
    public static void setUp(Theme theme, double scale, Contrast contrast) {
        Objects.requireNonNull(theme, "theme");
        if (!(scale >= LEAST_SCALE && scale <= MOST_SCALE)) {
            throw new IllegalArgumentException(
                    "scale must be from " + LEAST_SCALE + " to " + MOST_SCALE + ", was " + scale);
        }
        // Before set-up: a semibold font would else be sought among those of the system.
        FlatInterFont.installLazy();
        FlatJetBrainsMonoFont.installLazy();
        FlatLaf.setPreferredMonospacedFontFamily(FlatJetBrainsMonoFont.FAMILY);
        FlatLaf.setPreferredFontFamily(FlatInterFont.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(FlatInterFont.FAMILY_SEMIBOLD);
        FlatLaf.registerCustomDefaultsSource(Look.class.getPackageName(), Look.class.getClassLoader());
        FlatLaf.setGlobalExtraDefaults(
                contrast == Contrast.HIGH ? Map.of(Token.HAIRLINE.key(), "$" + Token.EDGE.key()) : Map.of());
        System.setProperty(SCALE_PROPERTY, Double.toString(scale));
        UIManager.put(DEFAULT_FONT, null);
        if (!FlatLaf.setup(theme.laf())) {
            throw new IllegalStateException("Java refused the look " + theme);
        }
        // Else text would also follow the size of the system's font, and lengths would not.
        Font chosen = UIManager.getFont(DEFAULT_FONT);
        UIManager.put(DEFAULT_FONT, new FontUIResource(chosen.deriveFont((float) (Type.BODY.size() * scale))));
        if (UIManager.get(LETTERING) == null) {
            UIManager.put(LETTERING, new ScreenLettering());
        }
        FlatLaf.updateUI();
    }

    /** The theme that is set. */
    public static Theme theme() {
        return FlatLaf.isLafDark() ? Theme.DARK : Theme.LIGHT;
    }

    /** How much everything is enlarged, on top of what the system enlarges. */
    public static double scale() {
        return UIScale.getUserScaleFactor();
    }

    /** A length of a screen at 100 % as whole pixels of a component. */
    public static int pixels(double length) {
        return (int) Math.round(length * scale());
    }

    /**
     * What text is painted with.
     *
     * @throws IllegalStateException if no look has been set up
     */
    public static Lettering lettering() {
        if (UIManager.get(LETTERING) instanceof Lettering lettering) {
            return lettering;
        }
        throw new IllegalStateException("call Look.setUp before painting");
    }
}
