package groupwright.definition.quality;

import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds words of totality; "all six bikes of the list" is bounded and left alone. */
record TotalityRule(Advice advice, Phrases phrases, Set<String> boundable, Set<String> bounds, Set<String> numerals)
        implements Rule {
    /** "all six", "all the six". */
    private static final int NUMBER_WITHIN = 2;
    /** "all bikes of the list". */
    private static final int BOUND_WITHIN = 6;

    TotalityRule(Advice advice, WordList grammar) {
        this(
                advice,
                advice.words().phrases(),
                advice.words().set("boundable"),
                advice.words().set("bounds"),
                grammar.set("numerals"));
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        return phrases.in(reading.tokens(), 0, reading.tokens().size()).stream()
                .filter(match -> !isBounded(reading, match))
                .map(match -> advice.on(reading, match));
    }

    private boolean isBounded(Reading reading, Match match) {
        return boundable.contains(match.entry().phrase())
                && IntStream.range(match.last(), match.last() + BOUND_WITHIN)
                        .takeWhile(i -> reading.isWithin(i, reading.tokens().size())
                                && !reading.token(i).startsSentence())
                        .anyMatch(i -> isBound(reading.token(i), i - match.last()));
    }

    private boolean isBound(Token token, int distance) {
        boolean isNumber = token.isNumber() || numerals.contains(token.text());
        return bounds.contains(token.text()) || isNumber && distance < NUMBER_WITHIN;
    }
}
