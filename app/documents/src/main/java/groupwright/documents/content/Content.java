package groupwright.documents.content;

import java.util.SortedSet;

/**
 * What a template can ask. The project implements it; a document reads it only while it is built. Equal questions get
 * equal answers as long as the project does not change.
 */
public interface Content {
    /**
     * Answers a placeholder.
     *
     * @param query the text between the braces, trimmed, for example {@code gear-range C-002},
     *     {@code largest-step lead from-teeth=14} or {@code project.name}; its first word is one of {@link #names()}
     */
    TextAnswer text(String query);

    /**
     * Answers a block.
     *
     * @param name one of {@link #blockNames()}
     * @param arguments the rest of the line, trimmed, may be empty
     */
    BlockAnswer block(String name, String arguments);

    /** All first words that {@link #text} knows; another word is refused with the nearest of these. */
    SortedSet<String> names();

    /** All block names; a fenced block of another name stays code, unless it looks like a misspelt one. */
    SortedSet<String> blockNames();
}
