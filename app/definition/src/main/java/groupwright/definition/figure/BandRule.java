package groupwright.definition.figure;

/** How well an answer is known, where a figure knows a closed form for it. */
@FunctionalInterface
public interface BandRule {
    /**
     * The band around a value.
     *
     * @param value the figure's own answer
     * @param in the same that the computation sees
     */
    Band band(Quantity value, Inputs in);
}
