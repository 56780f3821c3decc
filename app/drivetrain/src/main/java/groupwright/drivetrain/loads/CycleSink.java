package groupwright.drivetrain.loads;

/** Takes counted load cycles one by one, as they close. */
@FunctionalInterface
public interface CycleSink {
    /**
     * Takes one cycle or half cycle.
     *
     * @param range largest less smallest load of the cycle, above 0, in the unit of the samples
     * @param mean middle between them, in the same unit
     * @param count 1 for a cycle, 0.5 for half a one
     */
    void accept(double range, double mean, double count);
}
