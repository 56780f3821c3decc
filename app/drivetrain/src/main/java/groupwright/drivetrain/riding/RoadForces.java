package groupwright.drivetrain.riding;

import groupwright.drivetrain.quantity.Bounds;

/**
 * What holds a bicycle back on one grade, in N at the wheel: the terms of {@link PowerBalance} divided by the speed, with
 * all that does not depend on the speed worked out beforehand.
 *
 * @param rollingN rolling resistance
 * @param slopeN weight along the road, negative downhill
 * @param airKgPerM ½ · density · drag area
 * @param headwindMps wind along the road in m/s, positive against the rider
 * @param bearings drag of the wheel bearings
 */
public record RoadForces(double rollingN, double slopeN, double airKgPerM, double headwindMps, BearingDrag bearings) {

    /**
     * The forces of a system in some air on a grade.
     *
     * @param system rider and bicycle
     * @param air the air
     * @param grade rise / horizontal run, -1 to 1
     * @return the forces
     * @throws IllegalArgumentException if the grade lies outside its range
     */
    public static RoadForces of(RidingSystem system, Air air, double grade) {
        Bounds.within("the grade (rise / run)", grade, -1, 1, "");
        double cosine = 1 / StrictMath.sqrt(1 + grade * grade); // of atan(grade) without the angle, which costs more
        double weightN = system.massKg() * PowerBalance.GRAVITY;
        return new RoadForces(
                system.rollingCoefficient() * weightN * cosine,
                weightN * grade * cosine,
                air.densityKgPerM3() / 2 * (system.dragAreaM2() + system.wheelDragAreaM2()),
                air.headwindMps(),
                system.bearings());
    }

    /** Air resistance in N at a ground speed in m/s, negative in a tailwind faster than the rider. */
    public double airN(double speedMps) {
        double airSpeed = speedMps + headwindMps;
        return airKgPerM * airSpeed * StrictMath.abs(airSpeed);
    }

    /** Drag of the bearings in N at a ground speed in m/s. */
    public double bearingsN(double speedMps) {
        return bearings.forceN(speedMps);
    }

    /** All of it in N at a ground speed in m/s; never falls with speed. */
    public double totalN(double speedMps) {
        return rollingN + slopeN + airN(speedMps) + bearingsN(speedMps);
    }

    /** By how much {@link #totalN} grows with speed, in N·s/m. */
    public double growthNsPerM(double speedMps) {
        return 2 * airKgPerM * StrictMath.abs(speedMps + headwindMps) + bearings.perSpeedNsPerM();
    }
}
