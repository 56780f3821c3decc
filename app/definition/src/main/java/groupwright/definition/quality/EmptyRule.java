package groupwright.definition.quality;

import java.util.stream.Stream;

/** Finds a statement without a single word, number or mark. */
record EmptyRule(Advice advice) implements Rule {
    @Override
    public Stream<Finding> findings(Reading reading) {
        return reading.tokens().isEmpty() ? Stream.of(advice.on(reading, new Span(0, 0))) : Stream.empty();
    }
}
