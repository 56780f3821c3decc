package groupwright.definition.quality;

/**
 * The verb of obligation: "shall", or what stands in its place.
 *
 * @param span its tokens
 * @param force whether it binds
 * @param binding the words to write, "shall" or "shall be"
 */
record Verb(Span span, Force force, String binding) {
    enum Force {
        BINDING,
        WEAK
    }
}
