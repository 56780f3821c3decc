package groupwright.definition.quality;

import java.util.stream.Stream;

/** Finds the phrases of a word list wherever they stand. */
record WordRule(Advice advice, Phrases phrases) implements Rule {
    WordRule(Advice advice) {
        this(advice, advice.words().phrases());
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        return phrases.in(reading.tokens(), 0, reading.tokens().size()).stream()
                .map(match -> advice.on(reading, match));
    }
}
