package groupwright.definition.figure;

/** The function behind a figure: pure, and reading only through what it is given. */
@FunctionalInterface
public interface Computation {
    /**
     * Computes the answer.
     *
     * @param in subject, parameters and all that can be read
     */
    Answer compute(Inputs in);
}
