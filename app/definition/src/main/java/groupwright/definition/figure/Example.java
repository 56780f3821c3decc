package groupwright.definition.figure;

/**
 * One evaluated example of a figure, on the example project; a test asks for it.
 *
 * @param ask in the figure grammar, for example {@code gear-range C-901}
 * @param answer the answer as text: a number, {@code at=number} pairs, or a word
 */
public record Example(String ask, String answer) {}
