package groupwright.definition.quality;

import java.util.Objects;

/**
 * One line of a word list.
 *
 * @param phrase as written in the file
 * @param source where the word comes from, for example {@code iso} or {@code ours}; empty in lists of grammar
 * @param advice what to write in its place; empty if the advice of the check serves
 */
record Entry(String phrase, String source, String advice) {
    Entry {
        Objects.requireNonNull(phrase, "phrase");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(advice, "advice");
    }
}
