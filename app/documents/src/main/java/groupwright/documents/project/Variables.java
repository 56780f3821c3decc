package groupwright.documents.project;

import groupwright.definition.record.Entry;
import groupwright.definition.record.Invalid;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * What the words of loops stand for at one place of a template.
 *
 * @param records by the word of their kind, for example {@code rider}
 */
record Variables(Map<String, Entry> records) {
    static final Variables NONE = new Variables(Map.of());

    /** A word by itself: no part of a longer name, of a field or of a parameter. */
    private static final Pattern WORD = Pattern.compile("(?<![^\\s,])[a-z]+(?![^\\s,])");

    Variables {
        records = Map.copyOf(records);
    }

    /** These with one more. */
    Variables with(String word, Entry record) {
        Map<String, Entry> more = new TreeMap<>(records);
        more.put(word, record);
        return new Variables(more);
    }

    Optional<Entry> get(String word) {
        return Optional.ofNullable(records.get(word));
    }

    /**
     * What a word stands for.
     *
     * @throws Invalid if no loop around gives it a record
     */
    Entry need(String word) {
        return get(word)
                .orElseThrow(() -> new Invalid(
                        "",
                        "\"" + word + "\" stands for no record here",
                        "put this into a block \"each " + word + "\""));
    }

    /**
     * A text with each such word replaced by the id it stands for.
     *
     * @throws Invalid if one stands for nothing here
     */
    String resolve(String text) {
        return WORD.matcher(text).replaceAll(match -> {
            String word = match.group();
            return Kinds.contains(word) ? need(word).id().text() : word;
        });
    }
}
