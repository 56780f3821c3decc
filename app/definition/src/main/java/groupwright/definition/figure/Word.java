package groupwright.definition.figure;

/**
 * A state in a word, for example {@code holds}.
 *
 * @param word one of a few words the figure's documentation lists
 * @param detail what it is about, in words; may be empty
 */
public record Word(String word, String detail) implements Answer {}
