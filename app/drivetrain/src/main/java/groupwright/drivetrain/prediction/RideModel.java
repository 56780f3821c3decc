package groupwright.drivetrain.prediction;

import groupwright.drivetrain.riding.RoadForces;
import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profile;
import java.util.List;

/**
 * Predicts a ride along its profile.
 *
 * <p>Formula: on each step of the way the energy of {@link groupwright.drivetrain.riding.PowerBalance} is balanced by
 * backward Euler, ½ m v1² = ½ m v0² + Δs · (efficiency · P / v1 - F(v1)); steps are as short as pieces and last 2 s at
 * most. The mass includes the turning wheels with 0.14 kg·m², the wheels of Martin et al., J. Applied Biomechanics
 * 14(3), 1998. The rider starts at walking pace. He pedals with the power of his plan, coasts, brakes and shifts as
 * {@link RiderPlan} and {@link ShiftPolicy} say; if his power would leave him below walking pace he gets off and walks,
 * not slower than 1 km/h.
 *
 * <p>In one gear more power is never slower, beyond a thousandth that steps of other lengths make. With several gears a
 * stronger rider may shift at another place, above his fastest cadence or in a gear whose torque limits him; with a wide
 * cassette that too costs less than a thousandth.
 *
 * <p>Neglected: time and power lost in shifts, looking ahead, corners, tiring, wind that turns, efficiency that changes
 * with gear and power.
 */
public final class RideModel {
    /** A step lasts so many seconds at most. */
    static final double LONGEST_STEP_S = 2;

    /** On foot nobody is slower, in m/s: 1 km/h (own assumption). It bounds steps and time whatever the numbers. */
    static final double SLOWEST_MPS = 1 / 3.6;

    private static final double WHEEL_INERTIA_KG_M2 = 0.14;
    private static final double KMH_PER_MPS = 3.6;

    private final Ride ride;
    private final Gearbox gearbox;
    private final Tally tally;
    private final double massKg;
    private final double paceMps;
    private double speed;
    private double sinceShiftS;
    private int gear;

    private RideModel(Ride ride) {
        this.ride = ride;
        this.gearbox = new Gearbox(ride.gears(), ride.wheel(), ride.policy());
        this.tally = new Tally(gearbox, ride);
        double radiusM = ride.wheel().circumferenceM() / (2 * StrictMath.PI);
        this.massKg = ride.system().massKg() + WHEEL_INERTIA_KG_M2 / (radiusM * radiusM);
        this.paceMps = ride.rider().walkingPaceKmh() / KMH_PER_MPS;
        this.speed = paceMps;
        this.sinceShiftS = ride.policy().holdS();
        Piece first = ride.terrain().pieces().get(0);
        this.gear = gearbox.nearest(aimM(ride.rider().cadence().targetRpm(first.grade())));
    }

    /**
     * Predicts a ride.
     *
     * <p>Cost: a step for each piece, or for each 2 s where a piece takes longer, in the end at most pieces + length /
     * 0.28 m, 20 million for the longest profile; about 0.3 µs and the number of gears count for each. The answer holds
     * 8 bytes for each piece.
     *
     * @param ride terrain, gears and rider
     * @return what it comes to; all numbers are finite
     */
    public static Prediction predict(Ride ride) {
        return new RideModel(ride).run();
    }

    private Prediction run() {
        Profile terrain = ride.terrain();
        List<Piece> pieces = terrain.pieces();
        double[] ends = new double[pieces.size()];
        for (int i = 0; i < ends.length; i++) {
            pass(pieces.get(i));
            ends[i] = tally.timeS();
        }
        return tally.prediction(terrain.lengthM(), new Timetable(ends));
    }

    private void pass(Piece piece) {
        double grade = piece.grade();
        RoadForces forces = RoadForces.of(ride.system(), ride.air(), grade);
        boolean coasts = grade < ride.rider().coastingGrade() && forces.totalN(2 * paceMps) <= 0;
        double targetRpm = ride.rider().cadence().targetRpm(grade);
        double wheelW = coasts ? 0 : ride.rider().powerW(grade) * ride.system().efficiency();
        double cap = grade < 0 ? ride.rider().downhillCapKmh() / KMH_PER_MPS : Double.POSITIVE_INFINITY;
        double left = piece.lengthM();
        while (left > 0) {
            if (wheelW > 0) {
                shift(targetRpm);
            }
            Motion motion = new Motion(massKg, forces, wheelW > 0 ? legs(wheelW) : Legs.RESTING);
            double way = Math.min(left, LONGEST_STEP_S * speed);
            Stride stride = Stride.of(motion, speed, way, new Stride.Limits(paceMps, cap, wheelW));
            if (way > LONGEST_STEP_S / 2 * (speed + stride.toMps())) { // slowing down: it would last longer
                way = LONGEST_STEP_S / 2 * speed;
                stride = Stride.of(motion, speed, way, new Stride.Limits(paceMps, cap, wheelW));
            }
            tally.add(stride, forces, gear);
            sinceShiftS += stride.seconds();
            speed = stride.toMps();
            left -= way;
        }
    }

    private Legs legs(double wheelW) {
        double development = gearbox.developmentM(gear);
        double mostN = ride.rider().mostTorqueNm()
                * 2
                * StrictMath.PI
                / development
                * ride.system().efficiency();
        return new Legs(wheelW, mostN, development * ride.rider().cadence().mostRpm() / 60);
    }

    private void shift(double targetRpm) {
        if (sinceShiftS < ride.policy().holdS() || speed < paceMps) {
            return;
        }
        int next = gearbox.next(gear, aimM(targetRpm));
        if (next != gear) {
            tally.shifted(gear, next);
            gear = next;
            sinceShiftS = 0;
        }
    }

    /** The development in m that gives a cadence at the present speed. */
    private double aimM(double cadenceRpm) {
        return speed * 60 / cadenceRpm;
    }
}
