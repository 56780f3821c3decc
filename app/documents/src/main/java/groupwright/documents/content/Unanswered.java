package groupwright.documents.content;

/**
 * What a template asked for cannot be given.
 *
 * @param sentence what is wrong and what to do, as one sentence without a full stop, for example
 *     {@code there is no concept C-009; the concepts are C-001 and C-002}
 */
public record Unanswered(String sentence) implements TextAnswer, BlockAnswer {
    public Unanswered {
        if (sentence.isBlank()) {
            throw new IllegalArgumentException("an unanswered question needs a sentence");
        }
    }
}
