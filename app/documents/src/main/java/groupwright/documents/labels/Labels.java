package groupwright.documents.labels;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.ResourceBundle;

/** The fixed words of a document. English where a language has no words of its own, whatever the machine speaks. */
public final class Labels {
    private static final ResourceBundle.Control ASKED_LANGUAGE_OR_ENGLISH =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Locale locale;
    private final ResourceBundle words;

    private Labels(Locale locale, ResourceBundle words) {
        this.locale = locale;
        this.words = words;
    }

    /** The words for one language. */
    public static Labels of(Locale locale) {
        Objects.requireNonNull(locale, "locale");
        return new Labels(
                locale, ResourceBundle.getBundle("groupwright.documents.labels", locale, ASKED_LANGUAGE_OR_ENGLISH));
    }

    /** The language asked for. */
    public Locale locale() {
        return locale;
    }

    /** Whether there are words for a key, which may be made of a name that somebody else gave. */
    public boolean has(String key) {
        return words.containsKey(key);
    }

    /**
     * The words for a key.
     *
     * @param parts filled in at {@code {0}}, {@code {1}} …; give texts, since numbers are formatted elsewhere
     * @throws java.util.MissingResourceException for an unknown key, which is a programmer's mistake
     */
    public String text(String key, String... parts) {
        return new MessageFormat(words.getString(key), locale).format(parts);
    }
}
