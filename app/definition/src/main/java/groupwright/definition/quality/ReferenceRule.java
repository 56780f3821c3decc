package groupwright.definition.quality;

import java.util.stream.Stream;

/** Finds standards without date or edition, and phrases such as "latest edition". */
record ReferenceRule(Advice advice, WordRule phrases) implements Rule {
    ReferenceRule(Advice advice) {
        this(advice, new WordRule(advice));
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        Stream<Finding> undated = reading.standards().stream()
                .filter(standard -> standard.dating() == Standard.Dating.UNDATED)
                .map(standard -> advice.on(reading, standard.span()));
        return Stream.concat(undated, phrases.findings(reading));
    }
}
