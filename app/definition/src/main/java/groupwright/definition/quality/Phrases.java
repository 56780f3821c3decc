package groupwright.definition.quality;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A set of phrases, found in one pass. A phrase may hold {@code <number>}, begin with {@code <start>} (of a sentence)
 * and finish with {@code <end>} (a mark or the end of the text).
 *
 * <p>The longest phrase at the leftmost place wins, and what it covers is not looked at again: so "at most", listed as an
 * exception, keeps "most" from being found. A phrase never cuts a compound: "all" is not found in "all-day".
 */
final class Phrases {
    private static final String NUMBER = "<number>";
    private static final String START = "<start>";
    private static final String END = "<end>";

    /** A step of the search tree. Filled while the phrases are read, only read afterwards. */
    private static final class Node {
        final Map<String, Node> next = new HashMap<>();
        Optional<Hit> hit = Optional.empty();
    }

    private enum Role {
        WANTED,
        EXCEPTION
    }

    private record Hit(Entry entry, Role role) {}

    private record Found(int last, Hit hit) {}

    private final Node root = new Node();

    Phrases(List<Entry> wanted, List<Entry> exceptions) {
        wanted.forEach(entry -> add(entry, Role.WANTED));
        exceptions.forEach(entry -> add(entry, Role.EXCEPTION));
    }

    private void add(Entry entry, Role role) {
        Node node = root;
        for (String part : entry.phrase().split(" +")) {
            if (Set.of(NUMBER, START, END).contains(part)) {
                node = node.next.computeIfAbsent(part, key -> new Node());
            } else {
                for (Token token : Tokenizer.tokens(part, Set.of())) {
                    node = node.next.computeIfAbsent(token.text(), key -> new Node());
                }
            }
        }
        node.hit = Optional.of(new Hit(entry, role));
    }

    /**
     * The phrases between two tokens, from left to right.
     *
     * <p>Cost: linear in the number of tokens, times the length of the longest phrase.
     */
    List<Match> in(List<Token> tokens, int first, int last) {
        List<Match> matches = new ArrayList<>();
        int at = first;
        while (at < last) {
            Optional<Found> found = longestAt(tokens, at);
            if (found.isEmpty()) {
                at++;
                continue;
            }
            if (found.get().hit().role() == Role.WANTED) {
                matches.add(new Match(at, found.get().last(), found.get().hit().entry()));
            }
            at = found.get().last();
        }
        return matches;
    }

    /** The phrase that begins with a token, unless an exception does. */
    Optional<Match> at(List<Token> tokens, int index) {
        return longestAt(tokens, index)
                .filter(found -> found.hit().role() == Role.WANTED)
                .map(found -> new Match(index, found.last(), found.hit().entry()));
    }

    private Optional<Found> longestAt(List<Token> tokens, int index) {
        Token token = tokens.get(index);
        boolean mayOpen = root.next.containsKey(token.text()) || token.isNumber() || token.startsSentence();
        if (token.isHyphenated() || !mayOpen) {
            return Optional.empty();
        }
        Optional<Found> best = longest(tokens, index, root);
        Node start = root.next.get(START);
        if (start != null && token.startsSentence()) {
            best = longer(best, longest(tokens, index, start));
        }
        return best;
    }

    /** The longest phrase from here; the depth is that of the longest phrase. */
    private static Optional<Found> longest(List<Token> tokens, int index, Node node) {
        boolean isCut = index < tokens.size() && tokens.get(index).isHyphenated();
        Optional<Found> best = isCut ? Optional.empty() : node.hit.map(hit -> new Found(index, hit));
        Node end = node.next.get(END);
        if (end != null && isEnd(tokens, index)) {
            best = longer(best, end.hit.map(hit -> new Found(index, hit)));
        }
        if (index < tokens.size()) {
            Token token = tokens.get(index);
            best = longer(best, follow(tokens, index, node.next.get(token.text())));
            if (token.isNumber()) {
                best = longer(best, follow(tokens, index, node.next.get(NUMBER)));
            }
        }
        return best;
    }

    private static Optional<Found> follow(List<Token> tokens, int index, Node node) {
        return node == null ? Optional.empty() : longest(tokens, index + 1, node);
    }

    private static boolean isEnd(List<Token> tokens, int index) {
        return index == tokens.size() || tokens.get(index).kind() == Token.Kind.MARK;
    }

    private static Optional<Found> longer(Optional<Found> one, Optional<Found> other) {
        boolean isOther = one.isEmpty()
                || other.isPresent() && other.get().last() > one.get().last();
        return isOther ? other : one;
    }
}
