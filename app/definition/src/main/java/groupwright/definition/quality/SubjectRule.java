package groupwright.definition.quality;

import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds a statement that names nobody who shall do something: nothing before the verb, or neither a verb nor an article
 * at the beginning.
 */
record SubjectRule(Advice advice, Grammar grammar, Set<String> expletives) implements Rule {
    SubjectRule(Advice advice, Grammar grammar) {
        this(advice, grammar, advice.words().set("no subjects"));
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        if (reading.tokens().isEmpty()) {
            return Stream.empty();
        }
        if (reading.verb().isEmpty()) {
            return grammar.isArticle(reading.token(0))
                    ? Stream.empty()
                    : Stream.of(advice.on(reading, reading.sentence(), " without verb", Map.of()));
        }
        Verb verb = reading.verb().get();
        boolean isMissing =
                reading.subject().filter(span -> !names(reading, span)).isPresent();
        return isMissing
                ? Stream.of(advice.on(reading, verb.span(), "", Map.of("binding", verb.binding())))
                : Stream.empty();
    }

    private boolean names(Reading reading, Span span) {
        return IntStream.range(span.first(), span.last())
                .mapToObj(reading::token)
                .anyMatch(token -> token.isWord() && !expletives.contains(token.text()));
    }
}
