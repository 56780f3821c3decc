package groupwright.definition.quality;

/**
 * A standard named in a statement: "ISO 4210-8:2014".
 *
 * @param span its tokens
 * @param dating whether a year or an edition stands with it
 */
record Standard(Span span, Dating dating) {
    enum Dating {
        DATED,
        UNDATED
    }
}
