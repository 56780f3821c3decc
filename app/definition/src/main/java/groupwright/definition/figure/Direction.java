package groupwright.definition.figure;

/** Which way a figure is better. */
public enum Direction {
    HIGHER_IS_BETTER,
    LOWER_IS_BETTER,
    NEITHER
}
