package groupwright.drivetrain.loads;

/**
 * Cycles whose ranges lie in one class.
 *
 * @param fromRange lower edge, included
 * @param toRange upper edge, not included
 * @param cycles how many, above 0
 * @param largestRange the largest range met in the class
 */
public record RangeClass(double fromRange, double toRange, double cycles, double largestRange) {}
