package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Finds materials and ways of manufacture behind the verb; neighbouring ones become one finding. */
record SolutionRule(Advice advice, Phrases phrases) implements Rule {
    /** "forged from titanium" is one finding. */
    private static final int GAP = 2;

    SolutionRule(Advice advice) {
        this(advice, advice.words().phrases());
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        int first = reading.verb().map(verb -> verb.span().last()).orElse(0);
        List<Span> spans = new ArrayList<>();
        for (Match match : phrases.in(reading.tokens(), first, reading.tokens().size())) {
            int before = spans.size() - 1;
            if (before >= 0 && match.first() - spans.get(before).last() <= GAP) {
                spans.set(before, new Span(spans.get(before).first(), match.last()));
            } else {
                spans.add(new Span(match.first(), match.last()));
            }
        }
        return spans.stream().map(span -> advice.on(reading, span));
    }
}
