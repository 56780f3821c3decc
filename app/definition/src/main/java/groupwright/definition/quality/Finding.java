package groupwright.definition.quality;

import java.util.Objects;

/**
 * One piece of advice on a statement. It never blocks anything.
 *
 * @param check what was looked for
 * @param from where the words begin in the text, in UTF-16 units, from 0
 * @param to where they end, exclusive
 * @param words the words found: the text from {@code from} to {@code to}; empty only for an empty statement
 * @param reason why they harm, one sentence
 * @param better a better pattern, in the statement's own words where that is possible
 */
public record Finding(Check check, int from, int to, String words, String reason, String better) {
    public Finding {
        Objects.requireNonNull(check, "check");
        if (from < 0 || to - from != words.length()) {
            throw new IllegalArgumentException("the " + words.length() + " characters found cannot lie between " + from
                    + " and " + to + " of the text");
        }
        if (reason.isBlank() || better.isBlank()) {
            throw new IllegalArgumentException(check + " needs a reason and a better pattern");
        }
    }
}
