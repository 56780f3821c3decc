package groupwright.definition.quality;

import java.util.Locale;

/**
 * What is looked for in a requirement statement. The short name and the source of each are in the word list of the
 * language, named after {@link #id()}.
 */
public enum Check {
    /** There is no statement. */
    EMPTY,
    /** The binding verb "shall" is missing, or another one stands in its place. */
    NO_SHALL,
    /** Nothing and nobody is named that shall do something. */
    NO_SUBJECT,
    /** More than one requirement in one statement (29148, 5.2.5: singular). */
    SEVERAL,
    /** No number, no standard and no criterion (29148, 5.2.5: verifiable). */
    NO_MEASURE,
    /** A number that does not say of what. */
    NO_UNIT,
    /** A point still to be settled, such as TBC. */
    OPEN_POINT,
    /** Superlatives: best, most. */
    SUPERLATIVE,
    /** Subjective words: user friendly, easy to use. */
    SUBJECTIVE,
    /** Vague pronouns: it, this, that. */
    VAGUE_PRONOUN,
    /** Ambiguous adverbs and adjectives: almost always, significant, minimal. */
    AMBIGUOUS_WORD,
    /** Ambiguous logic: or, and/or. */
    AMBIGUOUS_LOGIC,
    /** Open-ended, non-verifiable terms: provide support, but not limited to. */
    OPEN_ENDED,
    /** Lists without an end: etc., e.g. */
    OPEN_LIST,
    /** Comparatives that do not say with what and by how much. */
    COMPARATIVE,
    /** Loopholes: if possible, as appropriate. */
    LOOPHOLE,
    /** Totality that no list bounds: all, always, never, every. */
    TOTALITY,
    /** A standard named without its date or edition. */
    UNDATED_REFERENCE,
    /** A capability stated by what it is not. */
    NEGATIVE,
    /** Two negatives that the reader has to resolve. */
    DOUBLE_NEGATIVE,
    /** A material or a way of manufacture in place of the need behind it. */
    SOLUTION,
    /** Conditions that are not in the EARS order Where, While, When or If, response. */
    EARS_ORDER,
    /** EARS: an "If" whose response does not begin with "then". */
    EARS_THEN;

    /** The stable name in files and machine output, for example {@code no-shall}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
