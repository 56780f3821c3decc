package groupwright.drivetrain.derailleur;

/**
 * The chains that a derailleur can hold in one gear.
 *
 * @param foremost cage and chain at the foremost angle, as in {@link Closure.TooTight}
 * @param rearmost cage and chain at the rearmost angle with a path
 */
public record PathRange(CagePosition foremost, CagePosition rearmost) {
    /** Length of path that the cage takes up between both ends in pitches; the slack that it can hold. */
    public double takesUpPitches() {
        return rearmost.lengthPitches() - foremost.lengthPitches();
    }
}
