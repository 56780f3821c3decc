package groupwright.definition.quality;

/**
 * A phrase found in a statement.
 *
 * @param first its first token
 * @param last the token after its last one
 * @param entry the line of the word list that was met
 */
record Match(int first, int last, Entry entry) {}
