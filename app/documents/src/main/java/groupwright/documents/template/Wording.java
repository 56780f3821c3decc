package groupwright.documents.template;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What the blocks of templates say in another language: each paragraph, heading or caption by its source text as written
 * in the template, white space apart. A block without such words stays as it was written.
 */
public final class Wording {
    /** Templates stay as they are written, and nobody misses anything. */
    public static final Wording AS_WRITTEN = new Wording(Map.of(), Optional.empty(), "");

    private final Map<String, Words> byOriginal; // looked up only
    private final Optional<Locale> language;
    private final String place;

    /**
     * The words for one block.
     *
     * @param file where they stand
     * @param line their first line there, from 0
     * @param markdown one paragraph, line ends kept
     */
    record Words(String file, int line, String markdown) {}

    private Wording(Map<String, Words> byOriginal, Optional<Locale> language, String place) {
        this.byOriginal = byOriginal;
        this.language = language;
        this.place = place;
    }

    /**
     * Words of catalogues that have been read.
     *
     * @param language told to the reader where a block has no words
     * @param place told to the reader where a block has no words: where they would be looked for
     * @param catalogues those of the first go before those of the next
     */
    public static Wording of(Locale language, String place, List<WordingCatalogue> catalogues) {
        Objects.requireNonNull(place, "place");
        Map<String, Words> all = new LinkedHashMap<>();
        catalogues.forEach(catalogue -> catalogue.words().forEach(all::putIfAbsent));
        return new Wording(Map.copyOf(all), Optional.of(language), place);
    }

    Optional<Words> of(String original) {
        return Optional.ofNullable(byOriginal.get(original));
    }

    /** One sentence about blocks that have no words, if that is worth one. */
    Optional<String> missing(Collection<Integer> lines) {
        if (lines.isEmpty()) {
            return Optional.empty();
        }
        int first = lines.stream().min(Integer::compare).orElseThrow();
        String blocks = lines.size() == 1 ? "1 block has" : lines.size() + " blocks have";
        return language.map(known -> blocks + " no " + known.getDisplayLanguage(Locale.ENGLISH) + " words in " + place
                + ", first at line " + first);
    }
}
