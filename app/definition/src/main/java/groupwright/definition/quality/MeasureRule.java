package groupwright.definition.quality;

import java.util.BitSet;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds a statement with nothing to measure: no number, no standard to pass, no criterion beside it. */
record MeasureRule(Advice advice, Set<String> numerals) implements Rule {
    MeasureRule(Advice advice, WordList grammar) {
        this(advice, grammar.set("numerals"));
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        boolean isMeasured = reading.tokens().isEmpty()
                || reading.statement().measure() == Measure.GIVEN
                || !reading.standards().isEmpty()
                || hasNumber(reading);
        return isMeasured ? Stream.empty() : Stream.of(advice.on(reading, place(reading)));
    }

    private boolean hasNumber(Reading reading) {
        BitSet named = NumberRule.namedNumbers(reading);
        return IntStream.range(0, reading.tokens().size())
                .anyMatch(i -> reading.token(i).isNumber() && !named.get(i)
                        || numerals.contains(reading.token(i).text()));
    }

    private static Span place(Reading reading) {
        Span predicate = reading.predicate();
        return predicate.isEmpty() ? reading.sentence() : predicate;
    }
}
