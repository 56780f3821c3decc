package groupwright.documents.content;

import java.util.Objects;

/** The answer to a placeholder. */
public sealed interface TextAnswer permits TextAnswer.Given, Unanswered {
    /** Text, a number, a verdict, or several of them. */
    record Given(Phrase phrase) implements TextAnswer {
        public Given {
            Objects.requireNonNull(phrase, "phrase");
        }
    }

    /** Shorthand for one or more parts. */
    static TextAnswer of(Inline... parts) {
        return new Given(Phrase.of(parts));
    }
}
