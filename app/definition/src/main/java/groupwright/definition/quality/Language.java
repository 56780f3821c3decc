package groupwright.definition.quality;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The word lists of one language.
 *
 * @param locale the language they are in
 * @param grammar verbs, keywords, numerals
 * @param checks one list a check
 */
record Language(Locale locale, WordList grammar, Map<Check, WordList> checks) {
    private static final Locale FALLBACK = Locale.ENGLISH;

    Language {
        checks = Map.copyOf(checks);
    }

    /** Loads the lists for a locale's language, or the English ones if there are none. */
    static Language of(Locale wanted) {
        Locale language = Locale.forLanguageTag(wanted.getLanguage());
        boolean isThere = Language.class.getResource(path(language, "grammar")) != null;
        return load(isThere ? language : FALLBACK);
    }

    private static Language load(Locale language) {
        Map<Check, WordList> checks = new EnumMap<>(Check.class);
        for (Check check : Check.values()) {
            checks.put(check, list(language, check.id()));
        }
        return new Language(language, list(language, "grammar"), checks);
    }

    private static String path(Locale language, String name) {
        return language.toLanguageTag() + "/" + name + ".txt";
    }

    private static WordList list(Locale language, String name) {
        String path = path(language, name);
        try (InputStream stream = Language.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("the word list " + path + " is missing from the program; add it");
            }
            List<String> lines = new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            return WordList.parse(path, lines);
        } catch (IOException e) {
            throw new UncheckedIOException("the word list " + path + " cannot be read", e);
        }
    }

    Advice advice(Check check) {
        return new Advice(check, checks.get(check));
    }
}
