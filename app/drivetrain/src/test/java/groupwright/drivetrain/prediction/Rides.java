package groupwright.drivetrain.prediction;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.BearingDrag;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Rides for tests, invented. */
final class Rides {
    static final Wheel WHEEL = new Wheel(2.2);
    static final GearSet WIDE =
            GearSet.of(Crankset.of(32), Cassette.of(10, 12, 14, 16, 18, 21, 24, 28, 32, 38, 44, 50));
    static final CadenceHabits HABITS = new CadenceHabits(60, 75, 95, 120);
    static final RidingSystem SYSTEM = RidingSystem.plain(85, 0.006, 0.4, 0.96);

    private Rides() {}

    static Ride of(Profile terrain, RiderPlan plan) {
        return Ride.of(terrain, WIDE, WHEEL, SYSTEM, Air.still(1.2), plan);
    }

    static RiderPlan constantPower(double watts) {
        return RiderPlan.of(List.of(new GradePower(0, watts)), -1, 300, HABITS);
    }

    static Profile terrain(Random random) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 20 + random.nextInt(200); i > 0; i--) {
            double grade = Math.max(-0.3, Math.min(0.3, 0.06 * random.nextGaussian()));
            pieces.add(new Piece(Seeds.between(random, 1, 300), grade));
        }
        return new Profile(0, pieces);
    }

    static RidingSystem system(Random random) {
        return new RidingSystem(
                Seeds.between(random, 50, 150),
                Seeds.between(random, 0, 0.03),
                Seeds.between(random, 0, 0.7),
                0.0044,
                BearingDrag.MARTIN_1998,
                Seeds.between(random, 0.9, 1));
    }

    static RiderPlan plan(Random random) {
        double least = Seeds.between(random, 40, 70);
        double low = least + Seeds.between(random, 0, 20);
        double high = low + Seeds.between(random, 0, 20);
        var habits = new CadenceHabits(least, low, high, high + Seeds.between(random, 0, 30));
        return RiderPlan.usual(Seeds.between(random, 0, 400), habits, Seeds.between(random, 20, 80));
    }

    static Ride any(Random random) {
        return Ride.of(
                terrain(random),
                Seeds.gearSet(random),
                Seeds.wheel(random),
                system(random),
                new Air(Seeds.between(random, 0.9, 1.3), Seeds.between(random, -8, 8)),
                plan(random));
    }

    static Ride with(Ride ride, RiderPlan plan) {
        return new Ride(ride.terrain(), ride.gears(), ride.wheel(), ride.system(), ride.air(), plan, ride.policy());
    }

    static Ride with(Ride ride, RidingSystem system) {
        return new Ride(ride.terrain(), ride.gears(), ride.wheel(), system, ride.air(), ride.rider(), ride.policy());
    }
}
