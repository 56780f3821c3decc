package groupwright.definition.quality;

import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds comparatives, unless their sentence says both with what and by how much. */
record ComparativeRule(Advice advice, Phrases phrases, Set<String> references) implements Rule {
    ComparativeRule(Advice advice) {
        this(advice, advice.words().phrases(), advice.words().set("references"));
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        return IntStream.range(0, reading.tokens().size())
                .filter(i -> reading.token(i).startsSentence())
                .mapToObj(i -> new Span(i, reading.endOfSentence(i)))
                .filter(sentence -> !isComplete(reading, sentence))
                .flatMap(sentence -> phrases.in(reading.tokens(), sentence.first(), sentence.last()).stream())
                .map(match -> advice.on(reading, match));
    }

    private boolean isComplete(Reading reading, Span sentence) {
        return any(reading, sentence, references) && hasNumber(reading, sentence);
    }

    private static boolean any(Reading reading, Span sentence, Set<String> words) {
        return IntStream.range(sentence.first(), sentence.last())
                .anyMatch(i -> words.contains(reading.token(i).text()));
    }

    private static boolean hasNumber(Reading reading, Span sentence) {
        return IntStream.range(sentence.first(), sentence.last())
                .anyMatch(i -> reading.token(i).isNumber() && !reading.token(i).isHyphenated());
    }
}
