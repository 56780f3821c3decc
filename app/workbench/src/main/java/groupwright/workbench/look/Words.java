package groupwright.workbench.look;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/** The fixed words of a package. English where a language has no words of its own, whatever the machine speaks. */
public final class Words {
    private static final ResourceBundle.Control ASKED_LANGUAGE_OR_ENGLISH =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Locale locale;
    private final ResourceBundle words;

    private Words(Locale locale, ResourceBundle words) {
        this.locale = locale;
        this.words = words;
    }

    /**
     * The words in {@code words.properties} beside a class.
     *
     * @throws java.util.MissingResourceException if there are none, which is a programmer's mistake
     */
    public static Words of(Class<?> anchor, Locale locale) {
        Objects.requireNonNull(locale, "locale");
        return new Words(
                locale,
                ResourceBundle.getBundle(
                        anchor.getPackageName() + ".words",
                        locale,
                        anchor.getClassLoader(),
                        ASKED_LANGUAGE_OR_ENGLISH));
    }

    /** The language asked for. */
    public Locale locale() {
        return locale;
    }

    /**
     * The words for a key, as {@link MessageFormat} fills them in: an apostrophe is written twice.
     *
     * @param parts filled in at {@code {0}}, {@code {1}} …
     * @throws java.util.MissingResourceException for an unknown key, which is a programmer's mistake
     */
    public String text(String key, Object... parts) {
        return new MessageFormat(words.getString(key), locale).format(parts);
    }
}
