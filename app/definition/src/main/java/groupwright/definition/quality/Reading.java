package groupwright.definition.quality;

import java.util.List;
import java.util.Optional;

/**
 * A statement taken apart, as far as words alone allow.
 *
 * @param statement what was read
 * @param tokens its tokens
 * @param sentence the sentence that holds the verb, or the first one
 * @param verb "shall" or what stands in its place
 * @param conditions the conditions before the response, in their order
 * @param subject what stands between the conditions and the verb; not present if that cannot be told
 * @param standards the standards named
 * @param nobody words for a subject that is missing
 */
record Reading(
        Statement statement,
        List<Token> tokens,
        Span sentence,
        Optional<Verb> verb,
        List<Condition> conditions,
        Optional<Span> subject,
        List<Standard> standards,
        String nobody) {
    private static final int LONGEST_QUOTE = 80;

    Reading {
        conditions = List.copyOf(conditions);
        standards = List.copyOf(standards);
    }

    Token token(int index) {
        return tokens.get(index);
    }

    boolean isWithin(int index, int end) {
        return index >= 0 && index < end && index < tokens.size();
    }

    /** Where the sentence of a token ends. */
    int endOfSentence(int index) {
        int end = index + 1;
        while (end < tokens.size() && !tokens.get(end).startsSentence()) {
            end++;
        }
        return end;
    }

    /** The text of some tokens, exactly as written. */
    String cut(Span span) {
        if (span.isEmpty()) {
            return "";
        }
        return statement
                .text()
                .substring(
                        tokens.get(span.first()).from(),
                        tokens.get(span.last() - 1).to());
    }

    /** The text of some tokens, shortened for use inside a sentence. */
    String quote(Span span) {
        if (span.isEmpty()) {
            return "";
        }
        int from = tokens.get(span.first()).from();
        int to = tokens.get(span.last() - 1).to();
        String text = statement.text();
        if (to - from <= LONGEST_QUOTE) {
            return text.substring(from, to);
        }
        int end = from + LONGEST_QUOTE;
        boolean isHalfCharacter = Character.isHighSurrogate(text.charAt(end - 1));
        return text.substring(from, isHalfCharacter ? end - 1 : end) + "\u2026";
    }

    /** The subject in its own words, or words for one that is missing. */
    String subjectWords() {
        return subject.filter(span -> !span.isEmpty()).map(this::quote).orElse(nobody);
    }

    /** What follows the verb in its sentence, without the full stop. */
    Span predicate() {
        int first = verb.map(found -> found.span().last()).orElse(sentence.first());
        return withoutStop(new Span(first, sentence.last()));
    }

    Span withoutStop(Span span) {
        boolean hasStop = !span.isEmpty() && token(span.last() - 1).isMark(".");
        return hasStop ? new Span(span.first(), span.last() - 1) : span;
    }
}
