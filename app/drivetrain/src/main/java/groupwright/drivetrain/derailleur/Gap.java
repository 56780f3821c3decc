package groupwright.drivetrain.derailleur;

/**
 * Room between guide pulley and cog on the line through their centres.
 *
 * @param tipsMm between the tips of the teeth in mm; below 0 they cut into each other
 * @param pitchCirclesMm between the pitch circles in mm, above 0 where a chain can pass
 */
public record Gap(double tipsMm, double pitchCirclesMm) {}
