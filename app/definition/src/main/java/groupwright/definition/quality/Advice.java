package groupwright.definition.quality;

import java.util.Map;
import java.util.Optional;

/**
 * The texts of one check in one language.
 *
 * @param check the check
 * @param words its file
 */
record Advice(Check check, WordList words) {
    /** The finding for some tokens, worded with the texts {@code reason} and {@code better}. */
    Finding on(Reading reading, Span span) {
        return on(reading, span, "", Map.of());
    }

    /** The finding for a phrase of the word list; the line's own advice goes before that of the check. */
    Finding on(Reading reading, Match match) {
        Span span = new Span(match.first(), match.last());
        String own = match.entry().advice();
        return own.isEmpty()
                ? on(reading, span)
                : finding(reading, span, words.text("reason"), new Template(own), Map.of());
    }

    /**
     * The finding for some tokens.
     *
     * @param variant appended to the keys {@code reason} and {@code better}, for example " without verb"
     * @param more values for places of the texts beside words, subject and rest
     */
    Finding on(Reading reading, Span span, String variant, Map<String, String> more) {
        return finding(reading, span, words.text("reason" + variant), words.text("better" + variant), more);
    }

    private Finding finding(Reading reading, Span span, Template reason, Template better, Map<String, String> more) {
        int from = span.isEmpty() ? 0 : reading.token(span.first()).from();
        String found = reading.cut(span);
        return new Finding(
                check,
                from,
                from + found.length(),
                found,
                reason.filled(place -> value(reading, span, more, place)),
                better.filled(place -> value(reading, span, more, place)));
    }

    private String value(Reading reading, Span span, Map<String, String> more, String place) {
        return switch (place) {
            case "words" -> reading.quote(span);
            case "subject" -> reading.subjectWords();
            case "rest" -> reading.quote(reading.predicate());
            default ->
                Optional.ofNullable(more.get(place))
                        .orElseThrow(() -> new IllegalArgumentException(
                                words.name() + " uses {" + place + "}, which has no value there"));
        };
    }
}
