package groupwright.workbench.components;

/**
 * Room a drawing wants, in pixels of a screen at 100 %.
 *
 * @param baseline of its text from above, or −1 where it has none
 */
public record Extent(double width, double height, double baseline) {
    public Extent {
        if (!(width >= 0 && height >= 0 && Double.isFinite(width + height + baseline))) {
            throw new IllegalArgumentException("no room of " + width + " by " + height);
        }
    }
}
