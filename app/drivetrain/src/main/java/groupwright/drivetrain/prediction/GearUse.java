package groupwright.drivetrain.prediction;

import groupwright.drivetrain.gearing.Gear;

/**
 * How much one gear was pedalled in.
 *
 * @param gear the gear
 * @param timeS time pedalled in it in s
 * @param distanceM distance pedalled in it in m
 * @param crankWorkJ work at the crank in it in J
 * @param crankTurns turns of the crank in it
 */
public record GearUse(Gear gear, double timeS, double distanceM, double crankWorkJ, double crankTurns) {}
