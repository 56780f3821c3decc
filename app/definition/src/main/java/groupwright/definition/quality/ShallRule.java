package groupwright.definition.quality;

import java.util.Map;
import java.util.stream.Stream;

/** Finds a statement without "shall". */
record ShallRule(Advice advice) implements Rule {
    @Override
    public Stream<Finding> findings(Reading reading) {
        if (reading.tokens().isEmpty()) {
            return Stream.empty();
        }
        if (reading.verb().isEmpty()) {
            return Stream.of(advice.on(reading, reading.sentence(), " without verb", Map.of()));
        }
        Verb verb = reading.verb().get();
        return verb.force() == Verb.Force.BINDING
                ? Stream.empty()
                : Stream.of(advice.on(reading, verb.span(), "", Map.of("binding", verb.binding())));
    }
}
