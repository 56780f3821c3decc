package groupwright.definition.quality;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds conditions in another order than Where, While, When or If, and conditions behind the response. */
record OrderRule(Advice advice, Grammar grammar, Set<String> restrictions) implements Rule {
    private static final int LONGEST_REWRITE = 6;

    OrderRule(Advice advice, Grammar grammar) {
        this(advice, grammar, advice.words().set("restrictions"));
    }

    @Override
    public Stream<Finding> findings(Reading reading) {
        return swapped(reading).or(() -> trailing(reading)).stream();
    }

    private Optional<Finding> swapped(Reading reading) {
        List<Condition> conditions = reading.conditions();
        return IntStream.range(1, conditions.size())
                .filter(i ->
                        conditions.get(i).keyword().rank < conditions.get(i - 1).keyword().rank)
                .mapToObj(i -> advice.on(reading, conditions.get(i).span(), "", Map.of("ordered", ordered(reading))))
                .findFirst();
    }

    private static String ordered(Reading reading) {
        return Stream.of(Condition.Keyword.values())
                .flatMap(keyword -> reading.conditions().stream().filter(one -> one.keyword() == keyword))
                .limit(LONGEST_REWRITE)
                .map(condition -> uncapitalised(reading.quote(condition.span())))
                .collect(Collectors.collectingAndThen(Collectors.joining(", "), OrderRule::capitalised));
    }

    /** A condition begins with a plain keyword, so its first letter may change. */
    private static String capitalised(String condition) {
        return condition.substring(0, 1).toUpperCase(Locale.ROOT) + condition.substring(1);
    }

    private static String uncapitalised(String condition) {
        return condition.substring(0, 1).toLowerCase(Locale.ROOT) + condition.substring(1);
    }

    /** "where" behind the verb mostly belongs to a noun, "only when" restricts: both are left alone. */
    private Optional<Finding> trailing(Reading reading) {
        Span all = reading.predicate();
        return IntStream.range(all.first(), reading.verb().isPresent() ? all.last() : all.first())
                .filter(i -> grammar.keyword(reading.tokens(), i)
                        .filter(keyword -> keyword != Condition.Keyword.WHERE)
                        .isPresent())
                .filter(i -> !restrictions.contains(reading.token(i - 1).text()))
                .mapToObj(i -> moved(reading, new Span(i, all.last())))
                .findFirst();
    }

    private Finding moved(Reading reading, Span condition) {
        Span response = new Span(reading.sentence().first(), condition.first());
        boolean isUnwanted = grammar.keyword(reading.tokens(), condition.first())
                .filter(keyword -> keyword == Condition.Keyword.IF)
                .isPresent();
        String quoted = reading.quote(response);
        boolean isArticle = grammar.isArticle(reading.token(response.first()));
        Map<String, String> parts = Map.of(
                "condition",
                capitalised(reading.quote(condition)),
                "response",
                isArticle ? uncapitalised(quoted) : quoted);
        return advice.on(reading, condition, isUnwanted ? " behind, if" : " behind", parts);
    }
}
