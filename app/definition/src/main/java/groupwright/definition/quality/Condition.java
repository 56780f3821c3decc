package groupwright.definition.quality;

/**
 * A condition before the response: "When the lever is pressed".
 *
 * @param keyword the word it begins with
 * @param span its tokens, the keyword included, the comma not
 */
record Condition(Keyword keyword, Span span) {
    /** The words of EARS that open a condition; {@link #rank} is their place in a complex statement. */
    enum Keyword {
        WHERE(0, EarsPattern.OPTIONAL_FEATURE),
        WHILE(1, EarsPattern.STATE_DRIVEN),
        WHEN(2, EarsPattern.EVENT_DRIVEN),
        IF(2, EarsPattern.UNWANTED_BEHAVIOUR);

        final int rank;
        final EarsPattern pattern;

        Keyword(int rank, EarsPattern pattern) {
            this.rank = rank;
            this.pattern = pattern;
        }
    }
}
