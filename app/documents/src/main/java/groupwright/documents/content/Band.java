package groupwright.documents.content;

/**
 * The band of what we know, on the scale of its {@link Inline.Bar}.
 *
 * @param low lower end, finite
 * @param high upper end, finite, at least {@code low}
 */
public record Band(double low, double high) {
    public Band {
        if (!(Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException("a band needs finite ends in order, had " + low + " and " + high);
        }
    }
}
