package groupwright.definition.sensitivity;

import groupwright.definition.record.Invalid;

/**
 * By how much each input is changed: measured numbers by a share, counts (teeth, pieces, links) by one.
 *
 * @param pct of a measured number, above 0, at most 100
 */
public record StatedChange(double pct) {
    /** A change that people can picture, small enough for curved figures. */
    public static final StatedChange USUAL = new StatedChange(1);

    public StatedChange {
        if (!(pct > 0 && pct <= 100)) {
            throw new Invalid("", "a change of " + pct + " % says nothing", "write one above 0 and up to 100 %");
        }
    }
}
