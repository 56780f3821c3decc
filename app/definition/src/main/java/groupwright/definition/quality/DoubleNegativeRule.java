package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Finds a negative close behind another: "not unserviceable", "never without". */
final class DoubleNegativeRule implements Rule {
    private static final int WITHIN = 3;

    private final Advice advice;
    private final Set<String> negators;
    private final Set<String> negatives;
    private final List<String> prefixes;
    private final Set<String> positives;

    DoubleNegativeRule(Advice advice) {
        this.advice = advice;
        negators = advice.words().set("negators");
        negatives = advice.words().set("negatives");
        prefixes = List.copyOf(advice.words().set("prefixes"));
        positives = advice.words().set("not negative");
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        List<Finding> found = new ArrayList<>();
        int negator = -1 - WITHIN;
        for (int i = 0; i < reading.tokens().size(); i++) {
            Token token = reading.token(i);
            negator = token.startsSentence() ? -1 - WITHIN : negator;
            if (i - negator <= WITHIN && isNegative(token.text())) {
                found.add(advice.on(reading, new Span(negator, i + 1)));
                negator = -1 - WITHIN;
            } else if (negators.contains(token.text())) {
                negator = i;
            }
        }
        return found.stream();
    }

    private boolean isNegative(String word) {
        return negators.contains(word)
                || negatives.contains(word)
                || !positives.contains(word) && prefixes.stream().anyMatch(word::startsWith);
    }
}
