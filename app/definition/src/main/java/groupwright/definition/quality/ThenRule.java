package groupwright.definition.quality;

import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds an "If" before the verb without a "then". */
record ThenRule(Advice advice, Grammar grammar) implements Rule {
    @Override
    public Stream<Finding> findings(Reading reading) {
        if (reading.verb().isEmpty() || hasThen(reading)) {
            return Stream.empty();
        }
        return reading.conditions().stream()
                .filter(condition -> condition.keyword() == Condition.Keyword.IF)
                .limit(1)
                .map(condition -> advice.on(
                        reading,
                        condition.span(),
                        "",
                        Map.of("binding", reading.verb().get().binding())));
    }

    private boolean hasThen(Reading reading) {
        return IntStream.range(
                        reading.sentence().first(), reading.verb().get().span().first())
                .anyMatch(i -> grammar.isThen(reading.token(i)));
    }
}
