package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** What has to be known of a language to find verb, conditions and subject of a statement. */
final class Grammar {
    private final Set<String> abbreviations;
    private final Set<String> binding;
    private final Phrases weak;
    private final String shall;
    private final Map<Condition.Keyword, Set<String>> keywords = new EnumMap<>(Condition.Keyword.class);
    private final Set<String> then;
    private final Set<String> articles;
    private final Phrases loopholes;
    private final Standards standards;
    private final String nobody;

    Grammar(WordList words, Phrases loopholes) {
        abbreviations = words.set("abbreviations");
        binding = words.set("shall");
        weak = new Phrases(words.section("other verbs"), words.section("no verbs"));
        shall = words.text("shall").text();
        for (Condition.Keyword keyword : Condition.Keyword.values()) {
            keywords.put(keyword, words.set(keyword.name().toLowerCase(Locale.ROOT)));
        }
        then = words.set("then");
        articles = words.set("articles");
        this.loopholes = loopholes;
        standards = new Standards(words.set("standard bodies"), words.set("editions"));
        nobody = words.text("nobody").text();
    }

    /** Takes a statement apart; linear in its length. */
    Reading read(Statement statement) {
        List<Token> tokens = Tokenizer.tokens(statement.text(), abbreviations);
        Optional<Verb> verb = verb(tokens);
        Span sentence = sentence(tokens, verb.map(found -> found.span().first()).orElse(0));
        List<Condition> conditions = new ArrayList<>();
        Optional<Span> subject = verb.flatMap(found -> {
            Span before = new Span(sentence.first(), found.span().first());
            return subject(tokens, before, conditions);
        });
        List<Standard> named = standards.in(tokens, statement.text());
        return new Reading(statement, tokens, sentence, verb, conditions, subject, named, nobody);
    }

    /** The keyword of a condition that begins with a token; "if possible" is no condition. */
    Optional<Condition.Keyword> keyword(List<Token> tokens, int index) {
        String text = tokens.get(index).text();
        return keywords.entrySet().stream()
                .filter(entry -> entry.getValue().contains(text))
                .map(Map.Entry::getKey)
                .findFirst()
                .filter(found -> loopholes.at(tokens, index).isEmpty());
    }

    boolean isThen(Token token) {
        return then.contains(token.text());
    }

    boolean isArticle(Token token) {
        return articles.contains(token.text());
    }

    private Optional<Verb> verb(List<Token> tokens) {
        for (int i = 0; i < tokens.size(); i++) {
            if (binding.contains(tokens.get(i).text())) {
                return Optional.of(new Verb(new Span(i, i + 1), Verb.Force.BINDING, shall));
            }
        }
        return weak.in(tokens, 0, tokens.size()).stream().findFirst().map(match -> {
            String advice = match.entry().advice();
            String better = advice.isEmpty() ? shall : advice;
            return new Verb(new Span(match.first(), match.last()), Verb.Force.WEAK, better);
        });
    }

    private static Span sentence(List<Token> tokens, int inside) {
        int first = inside;
        while (first > 0 && !tokens.get(first).startsSentence()) {
            first--;
        }
        int last = Math.min(inside + 1, tokens.size());
        while (last < tokens.size() && !tokens.get(last).startsSentence()) {
            last++;
        }
        return new Span(first, last);
    }

    /** Collects the conditions before the verb and returns the subject behind them. */
    private Optional<Span> subject(List<Token> tokens, Span before, List<Condition> conditions) {
        List<Integer> starts = new ArrayList<>();
        OptionalInt response = OptionalInt.empty();
        for (int i = before.first(); i < before.last(); i++) {
            boolean opens = i == before.first() || tokens.get(i - 1).isMark(",");
            if (opens && keyword(tokens, i).isPresent()) {
                starts.add(i);
            } else if (starts.isEmpty() && i == before.first()) {
                return Optional.of(before);
            }
            if (tokens.get(i).isMark(",") || isThen(tokens.get(i))) {
                response = OptionalInt.of(i + 1);
            }
        }
        if (starts.isEmpty()) {
            return Optional.of(before);
        }
        int end = response.orElse(before.last());
        for (int k = 0; k < starts.size(); k++) {
            int first = starts.get(k);
            int last = trimmed(tokens, first, k + 1 < starts.size() ? starts.get(k + 1) : Math.max(end, first + 1));
            conditions.add(new Condition(keyword(tokens, first).orElseThrow(), new Span(first, last)));
        }
        return response.isEmpty() ? Optional.empty() : Optional.of(new Span(end, before.last()));
    }

    private int trimmed(List<Token> tokens, int first, int last) {
        int end = last;
        while (end > first + 1 && (tokens.get(end - 1).isMark(",") || isThen(tokens.get(end - 1)))) {
            end--;
        }
        return end;
    }
}
