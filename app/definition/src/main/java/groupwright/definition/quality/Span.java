package groupwright.definition.quality;

/**
 * Some neighbouring tokens.
 *
 * @param first the first one
 * @param last the one after the last
 */
record Span(int first, int last) {
    boolean isEmpty() {
        return first >= last;
    }
}
