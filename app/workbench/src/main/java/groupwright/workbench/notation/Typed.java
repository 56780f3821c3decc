package groupwright.workbench.notation;

import java.util.Optional;

/** What came of reading a typed text. */
public sealed interface Typed {
    /**
     * A value.
     *
     * @param value of the field's Java type; nothing where the field is to be empty
     */
    record Value(Optional<?> value) implements Typed {}

    /**
     * No value.
     *
     * @param sentence what is wrong and what to type, in words for the person who typed
     */
    record Refused(String sentence) implements Typed {}

    /** A value that is there. */
    static Typed of(Object value) {
        return new Value(Optional.of(value));
    }

    /** An empty field. */
    static Typed empty() {
        return new Value(Optional.empty());
    }
}
