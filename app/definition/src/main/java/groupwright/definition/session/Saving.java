package groupwright.definition.session;

import java.util.Optional;

/** Whether the folder says what the session says. */
public sealed interface Saving {
    /** What there is to say about it, in one sentence; nothing where all is well. */
    Optional<String> told();

    /**
     * Everything is on disk.
     *
     * @param told normally nothing; else that the disk did not confirm it, or that something beside the records was left
     */
    record Saved(Optional<String> told) implements Saving {}

    /** Something is only in memory; the sentence says what happened, what was kept and what to do. */
    record Unsaved(String sentence) implements Saving {
        @Override
        public Optional<String> told() {
            return Optional.of(sentence);
        }
    }

    /** Nothing can be edited; the sentence says why. */
    record ReadOnly(String sentence) implements Saving {
        @Override
        public Optional<String> told() {
            return Optional.of(sentence);
        }
    }
}
