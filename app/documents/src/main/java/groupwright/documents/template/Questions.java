package groupwright.documents.template;

import groupwright.definition.figure.Nearest;
import groupwright.documents.content.Content;
import groupwright.documents.content.TextAnswer;
import groupwright.documents.content.Unanswered;
import java.util.Optional;
import java.util.SortedSet;
import org.commonmark.node.FencedCodeBlock;

/** Reads what placeholders and fenced blocks ask for, and reports what cannot be asked. */
final class Questions {
    /** Shorter names of code languages are too near to everything. */
    private static final int SHORTEST_MISSPELT = 4;

    private final Problems problems;

    Questions(Problems problems) {
        this.problems = problems;
    }

    /** What fills a placeholder; nothing where that was reported. */
    Optional<TextAnswer.Given> ask(Placeholder placeholder, Content content, Origin origin) {
        String query = placeholder.query();
        if (placeholder.form() == Placeholder.Form.NOT_CLOSED) {
            problems.add(
                    Problem.Kind.MALFORMED,
                    placeholder,
                    origin,
                    "\"{{\" is not closed by \"}}\" on the same line"
                            + " or in the same table cell; close it, or write \"\\{{\" for two braces");
        } else if (query.isEmpty()) {
            problems.add(
                    Problem.Kind.MALFORMED,
                    placeholder,
                    origin,
                    "nothing stands between \"{{\" and \"}}\"; write"
                            + " what to show, for example {{ gear-range lead }}");
        } else if (!content.names().contains(firstWord(query))) {
            String name = firstWord(query);
            problems.add(
                    Problem.Kind.UNKNOWN_NAME,
                    placeholder,
                    origin,
                    "nothing is called \"" + name + "\"; " + suggestion(name, content.names()));
        } else {
            TextAnswer answer = content.text(query);
            if (answer instanceof TextAnswer.Given given) {
                return Optional.of(given);
            }
            problems.add(Problem.Kind.UNANSWERED, placeholder, origin, ((Unanswered) answer).sentence());
        }
        return Optional.empty();
    }

    /** The block that a fence names; nothing where it is code to show, or something is wrong with it and was reported. */
    Optional<String> block(FencedCodeBlock fence, Content content, Origin origin) {
        String name = firstWord(Optional.ofNullable(fence.getInfo()).orElse("").strip());
        if (content.blockNames().contains(name)) {
            if (fence.getClosingFenceLength() != null) {
                return Optional.of(name);
            }
            problems.add(
                    Problem.Kind.MALFORMED,
                    fence,
                    origin,
                    "the block \"" + name + "\" is not closed; end it with a line of "
                            + fence.getFenceCharacter().repeat(fence.getOpeningFenceLength())
                            + ", and give a block that holds others a longer fence than theirs");
        } else if (name.length() >= SHORTEST_MISSPELT
                && Nearest.of(name, content.blockNames()).isPresent()) {
            problems.add(
                    Problem.Kind.UNKNOWN_NAME,
                    fence,
                    origin,
                    "no block is called \"" + name + "\"; " + suggestion(name, content.blockNames()));
        }
        return Optional.empty();
    }

    private static String suggestion(String name, SortedSet<String> known) {
        return Nearest.of(name, known)
                .map(nearest -> "did you mean \"" + nearest + "\"?")
                .orElse("the reference lists all names");
    }

    private static String firstWord(String text) {
        int end = 0;
        while (end < text.length() && !Character.isWhitespace(text.charAt(end))) {
            end++;
        }
        return text.substring(0, end);
    }
}
