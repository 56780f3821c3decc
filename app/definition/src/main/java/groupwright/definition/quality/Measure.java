package groupwright.definition.quality;

/** Whether a statement is accompanied by a criterion that carries the number. */
public enum Measure {
    /** The words are all there is. */
    NONE,
    /** A criterion (figure, comparator, target, unit) belongs to the statement. */
    GIVEN
}
