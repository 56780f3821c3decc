package groupwright.drivetrain.prediction;

import java.util.List;

/**
 * Cadences pedalled.
 *
 * @param binS seconds pedalled in each bin of {@link #BIN_RPM}, from 0 rpm upwards; no trailing empty bins
 * @param comfortableS seconds pedalled within the preferred cadences
 * @param grindingS seconds pedalled below the least cadence
 */
public record CadenceUse(List<Double> binS, double comfortableS, double grindingS) {
    /** Width of a bin in rpm; a bin includes its lower edge. */
    public static final double BIN_RPM = 10;

    /** Copies the bins. */
    public CadenceUse {
        binS = List.copyOf(binS);
    }

    /** Seconds pedalled. */
    public double pedallingS() {
        return binS.stream().mapToDouble(seconds -> seconds).sum();
    }
}
