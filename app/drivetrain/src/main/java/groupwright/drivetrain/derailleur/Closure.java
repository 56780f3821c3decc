package groupwright.drivetrain.derailleur;

import java.util.Optional;

/** What becomes of a chain of given length in one gear. */
public sealed interface Closure {
    /**
     * The chain closes and the cage holds it.
     *
     * @param at cage and chain
     */
    record Closes(CagePosition at) implements Closure {}

    /**
     * The chain is too short: even at the foremost angle it does not reach round.
     *
     * @param atForwardStop cage and chain as far forward as the cage goes. That is the forward stop, unless a pulley
     *     would cut into ring or cog there or the chain would come off a wheel; then it is the foremost angle without that
     * @param lacksMm length of chain that lacks there in mm, above 0
     */
    record TooTight(CagePosition atForwardStop, double lacksMm) implements Closure {}

    /**
     * The chain is too long: even at the rearmost angle it hangs.
     *
     * @param atRearwardStop cage and chain as far rearward as the cage goes. That is the rearward stop, unless a pulley
     *     would cut into ring or cog on the way or the chain would come off a wheel; then it is the last angle before
     * @param hangsMm length of chain that is left over there in mm, above 0
     */
    record Slack(CagePosition atRearwardStop, double hangsMm) implements Closure {}

    /**
     * The guide pulley stands in the way: the cage cannot come to the angle at which the chain would close, as the pitch
     * circles of guide pulley and cog touch before; or they overlap between the stops and no angle is left at which the
     * chain can run. A chain that closes while only the tips of the teeth cut into each other is not this, but
     * {@link Closes} with a {@link Gap#tipsMm} below 0, so that one sees by how much.
     *
     * @param cageAngleDeg where they touch; the foremost angle at which they overlap if the chain can run at no angle
     * @param touching cage and chain where they touch; empty if the chain can run at no angle, as when the path drives
     *     the pulley into the cog at every one
     */
    record PulleyMeetsCog(double cageAngleDeg, Optional<CagePosition> touching) implements Closure {}

    /**
     * The chain can run at no angle between the stops, whatever its length, and it is not the guide pulley that meets
     * the cog: the mechanism does not suit the bike.
     *
     * @param why what is in the way at the forward stop
     */
    record NoPath(Obstacle why) implements Closure {}

    /** What can keep a chain from running. */
    enum Obstacle {
        /** Pitch circles other than those of guide pulley and cog overlap. */
        WHEELS_OVERLAP,
        /** The chain would come off a wheel, or wind round it so far that it meets itself. */
        CHAIN_OFF_A_WHEEL
    }
}
