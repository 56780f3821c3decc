package groupwright.drivetrain.derailleur;

/**
 * The four straight pieces of a closed chain, for drawing.
 *
 * @param upper from cog to ring
 * @param lower from ring to tension pulley
 * @param cage from tension to guide pulley
 * @param free from guide pulley to cog
 */
public record Spans(Span upper, Span lower, Span cage, Span free) {}
