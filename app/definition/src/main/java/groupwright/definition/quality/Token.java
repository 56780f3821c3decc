package groupwright.definition.quality;

/**
 * A word, a number or a mark of a statement.
 *
 * @param kind what it is
 * @param link how it follows the token before it
 * @param text in lower case, with plain apostrophes and without soft hyphens
 * @param from where it begins in the statement, in UTF-16 units
 * @param to where it ends, exclusive
 */
record Token(Kind kind, Link link, String text, int from, int to) {
    enum Kind {
        WORD,
        NUMBER,
        MARK
    }

    enum Link {
        /** Begins a sentence. */
        SENTENCE,
        /** Forms one compound with the token before it: "bottom-bracket", "118-link", "G-2". */
        HYPHEN,
        /** Neither. */
        APART
    }

    boolean isWord() {
        return kind == Kind.WORD;
    }

    boolean isNumber() {
        return kind == Kind.NUMBER;
    }

    boolean isMark(String mark) {
        return kind == Kind.MARK && text.equals(mark);
    }

    boolean startsSentence() {
        return link == Link.SENTENCE;
    }

    boolean isHyphenated() {
        return link == Link.HYPHEN;
    }
}
