package groupwright.definition.record;

/** A gear that is not used, for example because the chain would run too much aslant. */
public record ExcludedGear(
        @Help("Short id") String id,

        @Help("Teeth of the ring") @Limits(least = 5, most = 120)
        int ring,

        @Help("Teeth of the cog") @Limits(least = 5, most = 80)
        int cog)
        implements Item {}
