package groupwright.definition.record;

import java.util.Optional;

/** A figure a claim rests on, with the limit it must keep for the claim to be true. */
public record Support(
        @Help("Short id, for example s1") String id,

        @Help("The figure with its subject, for example gear-range C-002") @Required
        String figure,

        @Help("At least or at most") Optional<Side> comparator,

        @Help("The limit; without one only the value itself is watched")
        Optional<Amount> limit,

        @Help("Unit of the limit") @Default("\"\"") String unit)
        implements Item {
    /** On which side of the limit the claim is true. */
    public enum Side {
        AT_LEAST,
        AT_MOST
    }

    public Support {
        if (comparator.isPresent() != limit.isPresent()) {
            throw new Invalid("limit", "comparator and limit go together", "write both or neither");
        }
    }
}
