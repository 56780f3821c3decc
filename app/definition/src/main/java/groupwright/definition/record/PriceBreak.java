package groupwright.definition.record;

/** What one piece costs from some quantity on. */
public record PriceBreak(
        @Help("Short id") String id,

        @Help("From this many pieces on") @Limits(least = 1, most = 1e9)
        int fromQuantity,

        @Help("Cost of one piece, in cents or the like") @Limits(least = 0, most = 1e12)
        Amount unitCost_minor)
        implements Item {}
