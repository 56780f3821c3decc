package groupwright.drivetrain.prediction;

import java.util.List;

/**
 * What a ride comes to.
 *
 * @param lengthM length of the ride in m
 * @param timeS time in s
 * @param gearUse use of each gear, lowest ratio first, all gears in use listed
 * @param cadence cadences pedalled
 * @param shifts shifts made
 * @param coastingS seconds rolled without pedalling
 * @param walkingS seconds on foot
 * @param energy where the work came from and went
 * @param times when the end of each piece was reached
 */
public record Prediction(
        double lengthM,
        double timeS,
        List<GearUse> gearUse,
        CadenceUse cadence,
        ShiftCount shifts,
        double coastingS,
        double walkingS,
        Energy energy,
        Timetable times) {
    private static final double S_PER_HOUR = 3600;

    /** Copies the use of gears. */
    public Prediction {
        gearUse = List.copyOf(gearUse);
    }

    /** Mean speed in km/h, walking included. */
    public double averageKmh() {
        return lengthM / timeS * 3.6;
    }

    /**
     * Cadence comfort: share of the time pedalled or walked that was pedalled within the preferred cadences, 0 to 1.
     * Coasting does not count. 1 if the rider only coasted.
     */
    public double comfortShare() {
        double effortS = cadence.pedallingS() + walkingS;
        return effortS > 0 ? cadence.comfortableS() / effortS : 1;
    }

    /** Shift actions for each hour of the ride. */
    public double shiftActionsPerHour() {
        return shifts.actions() / timeS * S_PER_HOUR;
    }

    /** Cogs moved for each hour of the ride. */
    public double cogsPerHour() {
        return shifts.cogs() / timeS * S_PER_HOUR;
    }

    /** Front shifts for each hour of the ride. */
    public double frontShiftsPerHour() {
        return shifts.front() / timeS * S_PER_HOUR;
    }
}
