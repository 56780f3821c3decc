package groupwright.definition.quality;

/** The sentence patterns of EARS (Mavin, Wilkinson, Harwood, Novak, RE'09, 2009). */
public enum EarsPattern {
    /** The X shall R. */
    UBIQUITOUS,
    /** When T, the X shall R. */
    EVENT_DRIVEN,
    /** While S, the X shall R. */
    STATE_DRIVEN,
    /** If T, then the X shall R. */
    UNWANTED_BEHAVIOUR,
    /** Where F, the X shall R. */
    OPTIONAL_FEATURE,
    /** Several conditions before one response. */
    COMPLEX
}
