package groupwright.workbench.notation;

import java.util.Optional;

/**
 * Writes the values of one field for a reader, and reads them back. What it wrote it reads as the same value.
 */
public interface Notation {
    /** The text of a value; empty where there is none. */
    String shown(Optional<?> value);

    /** What a typed text means; never throws. */
    Typed read(String text);
}
