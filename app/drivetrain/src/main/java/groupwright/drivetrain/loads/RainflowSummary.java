package groupwright.drivetrain.loads;

/**
 * How much a rainflow counter counted.
 *
 * @param samples samples of the history
 * @param reversals its first and last sample and the turns between; 1 if all samples are equal
 * @param fullCycles cycles counted 1
 * @param halfCycles ranges counted 0.5
 * @param largestRange the largest range, 0 if there is none
 * @param deepest most reversals kept at a time, which is the memory the history needed
 */
public record RainflowSummary(
        long samples, long reversals, long fullCycles, long halfCycles, double largestRange, int deepest) {

    /** Cycles, two halves taken as one: (reversals - 1) / 2, and 0 for no samples. */
    public double cycles() {
        return fullCycles + halfCycles / 2.0;
    }
}
