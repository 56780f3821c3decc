package groupwright.workbench.look;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The fixed words of a package, kept in {@code words.properties} beside its classes. English where a language has none. */
public final class Words {
    private static final ResourceBundle.Control ASKED_LANGUAGE_OR_ENGLISH =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Locale locale;
    private final ResourceBundle words;

    private Words(Locale locale, ResourceBundle words) {
        this.locale = locale;
        this.words = words;
    }

    /** The words of a class's package for one language. */
    public static Words of(Class<?> anchor, Locale locale) {
        return new Words(
                locale,
                ResourceBundle.getBundle(
                        anchor.getPackageName() + ".words",
                        locale,
                        anchor.getClassLoader(),
                        ASKED_LANGUAGE_OR_ENGLISH));
    }

    public Locale locale() {
        return locale;
    }

    /**
     * The words for a key.
     *
     * @param parts filled in at {@code {0}}, {@code {1}} …; give texts, since numbers are formatted elsewhere
     * @throws java.util.MissingResourceException for an unknown key, which is a programmer's mistake
     */
    public String text(String key, Object... parts) {
        return new MessageFormat(words.getString(key), locale).format(parts);
    }
}
