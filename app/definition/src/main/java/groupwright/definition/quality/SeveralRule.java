package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds several requirements in one statement: a second "shall", a list of properties behind "be", or a second verb
 * behind "and". Without a parser some are missed; two conditions joined by "and" are left alone on purpose.
 */
final class SeveralRule implements Rule {
    /** A property has at most so many words: "quiet", "in line with the brand". */
    private static final int LONGEST_PROPERTY = 3;

    private final Advice advice;
    private final Set<String> shall;
    private final Set<String> be;
    private final Set<String> and;
    private final Set<String> verbs;
    private final Set<String> notProperties;

    SeveralRule(Advice advice, Set<String> shall) {
        this.advice = advice;
        this.shall = shall;
        be = advice.words().set("be");
        and = advice.words().set("and");
        verbs = advice.words().set("verbs");
        notProperties = advice.words().set("not properties");
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        if (reading.verb().isEmpty()) {
            return Stream.empty();
        }
        Verb verb = reading.verb().get();
        Span all = reading.predicate();
        List<Span> items = properties(reading, verb, all);
        if (items.size() > 1) {
            return Stream.of(finding(reading, items));
        }
        Optional<Finding> second = secondShall(reading, verb);
        return second.or(() -> secondVerb(reading, all)).stream();
    }

    private Optional<Finding> secondShall(Reading reading, Verb verb) {
        return IntStream.range(verb.span().last(), reading.tokens().size())
                .filter(i -> shall.contains(reading.token(i).text()))
                .mapToObj(i -> new Span(i, reading.endOfSentence(i)))
                .map(span -> finding(reading, List.of(reading.withoutStop(span))))
                .findFirst();
    }

    private Optional<Finding> secondVerb(Reading reading, Span all) {
        return IntStream.range(all.first() + 1, all.last() - 1)
                .filter(i -> and.contains(reading.token(i).text())
                        && verbs.contains(reading.token(i + 1).text()))
                .mapToObj(i -> finding(reading, List.of(new Span(all.first(), i), new Span(i + 1, all.last()))))
                .findFirst();
    }

    /** The finding for what is asked at once; a second "shall" is quoted alone. */
    private Finding finding(Reading reading, List<Span> items) {
        String quoted = items.stream()
                .limit(5)
                .map(item -> '"' + reading.quote(item) + '"')
                .collect(Collectors.joining("; "));
        Span span = new Span(items.get(0).first(), items.get(items.size() - 1).last());
        String count = String.valueOf(Math.max(2, items.size()));
        return advice.on(reading, span, "", Map.of("items", quoted, "count", count));
    }

    /** The items of "be A, B and C": short, without numbers; empty if it is no such list. */
    private List<Span> properties(Reading reading, Verb verb, Span all) {
        int first = all.first();
        boolean hasBe = be.contains(reading.token(first - 1).text());
        if (!hasBe && (all.isEmpty() || !be.contains(reading.token(first).text()))) {
            return List.of();
        }
        List<Span> items = new ArrayList<>();
        int start = hasBe ? first : first + 1;
        int words = 0; // of this item, a compound counted once
        for (int i = start; i < all.last(); i++) {
            Token token = reading.token(i);
            if (token.isMark(",") || and.contains(token.text())) {
                items.add(new Span(start, i));
                start = i + 1;
                words = 0;
            } else if (!token.isHyphenated()) {
                words++;
            }
            if (and.contains(token.text())) {
                return withLast(reading, items, new Span(start, all.last()));
            }
            if (notProperties.contains(token.text()) || token.isNumber() || words > LONGEST_PROPERTY) {
                return List.of();
            }
        }
        return List.of();
    }

    private static List<Span> withLast(Reading reading, List<Span> items, Span tail) {
        int end = tail.first();
        while (end < tail.last() && reading.token(end).kind() != Token.Kind.MARK) {
            end++;
        }
        Span item = new Span(tail.first(), end);
        if (item.isEmpty()
                || reading.token(item.first()).isNumber()
                || items.stream().anyMatch(Span::isEmpty)) {
            return List.of();
        }
        items.add(item);
        return items;
    }
}
