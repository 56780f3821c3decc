package groupwright.drivetrain.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.Seeds;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.riding.PowerBalance;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any ride: seeded random terrains, gears and riders. */
class RidePropertiesTest {
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void theEnergyAddsUpAndSoDoesTheRest(long seed) {
        Ride ride = Rides.any(new Random(seed));
        Prediction prediction = RideModel.predict(ride);
        Energy energy = prediction.energy();
        double scale = Math.max(energy.suppliedJ(), Math.abs(energy.slopeJ()) + energy.rollingJ());
        assertEquals(energy.suppliedJ(), energy.spentJ(), 1e-9 * scale);
        double riseJ =
                ride.system().massKg() * PowerBalance.GRAVITY * ride.terrain().endElevationM();
        assertEquals(riseJ, energy.slopeJ(), 1e-9 * scale);
        assertTrue(energy.brakingJ() >= 0 && energy.pushedJ() >= 0 && energy.crankJ() >= 0);
        double usedS = prediction.gearUse().stream().mapToDouble(GearUse::timeS).sum();
        double usedJ =
                prediction.gearUse().stream().mapToDouble(GearUse::crankWorkJ).sum();
        assertEquals(prediction.cadence().pedallingS(), usedS, 1e-6 * prediction.timeS());
        assertEquals(energy.crankJ(), usedJ, 1e-6 * energy.crankJ());
        assertEquals(
                prediction.timeS(), usedS + prediction.coastingS() + prediction.walkingS(), 1e-9 * prediction.timeS());
        assertEquals(
                prediction.timeS(), prediction.times().endS(prediction.times().size() - 1));
        assertTrue(prediction.comfortShare() >= 0 && prediction.comfortShare() <= 1 + 1e-12);
        assertTrue(prediction.shifts().cogs() + prediction.shifts().front()
                >= prediction.shifts().actions());
        assertTrue(prediction.shifts().actions()
                <= prediction.timeS() / ride.policy().holdS());
        assertEquals(ride.gears().gears().size(), prediction.gearUse().size());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void turnsAndWorkFitCadenceAndPower(long seed) {
        Ride ride = Rides.any(new Random(seed));
        Prediction prediction = RideModel.predict(ride);
        double turns =
                prediction.gearUse().stream().mapToDouble(GearUse::crankTurns).sum();
        double low = 0;
        double most = ride.rider().power().get(3).crankPowerW();
        for (int i = 0; i < prediction.cadence().binS().size(); i++) {
            low += i * CadenceUse.BIN_RPM / 60 * prediction.cadence().binS().get(i);
        }
        double pedallingS = prediction.cadence().pedallingS();
        assertTrue(turns >= low - 1e-6);
        assertTrue(turns <= low + CadenceUse.BIN_RPM / 60 * pedallingS + 1e-6);
        // the power of a step is that at its end, its time that of the mean speed: they differ while speeding up
        assertTrue(prediction.energy().crankJ() <= 1.25 * most * pedallingS + 1e-6);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void inOneGearMorePowerIsNeverSlower(long seed) {
        // with several gears it can be: a stronger rider may shift at another place, see the next test
        var random = new Random(seed);
        Ride any = Rides.any(random);
        GearSet one = GearSet.of(Crankset.of(24 + random.nextInt(20)), Cassette.of(11 + random.nextInt(30)));
        Ride ride = Ride.of(any.terrain(), one, any.wheel(), any.system(), any.air(), any.rider());
        RiderPlan plan = ride.rider();
        double watts = Seeds.between(random, 50, 300);
        Ride weak = Rides.with(ride, withPower(plan, watts));
        Ride strong = Rides.with(ride, withPower(plan, watts * 1.1));
        // steps are as long as the speed lets them be, so that the two rides are not cut alike
        double weakS = RideModel.predict(weak).timeS();
        assertTrue(RideModel.predict(strong).timeS() <= weakS * 1.001);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void withAWideCassetteMorePowerLosesLessThanAThousandth(long seed) {
        var random = new Random(seed);
        Ride ride = Rides.of(Rides.terrain(random), Rides.plan(random));
        double watts = Seeds.between(random, 50, 300);
        double weakS = RideModel.predict(Rides.with(ride, withPower(ride.rider(), watts)))
                .timeS();
        double strongS = RideModel.predict(Rides.with(ride, withPower(ride.rider(), watts * 1.05)))
                .timeS();
        assertTrue(strongS <= weakS * 1.001, () -> strongS + " after " + weakS);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void heavierIsSlowerUphill(long seed) {
        var random = new Random(seed);
        Piece[] climb = new Piece[20];
        for (int i = 0; i < climb.length; i++) {
            climb[i] = new Piece(Seeds.between(random, 20, 300), Seeds.between(random, 0.03, 0.15));
        }
        Ride ride = Rides.of(Profile.of(climb), Rides.constantPower(Seeds.between(random, 100, 350)));
        Ride heavier = Rides.with(ride, RidingSystem.plain(95, 0.006, 0.4, 0.96));
        assertTrue(RideModel.predict(heavier).timeS() > RideModel.predict(ride).timeS());
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("groupwright.drivetrain.Seeds#hundred")
    void finerStepsChangeTheTimeByLessThanTwoPercent(long seed) {
        var random = new Random(seed);
        Ride ride = Rides.of(Rides.terrain(random), RiderPlan.usual(200, Rides.HABITS, 50));
        List<Piece> fine = new ArrayList<>();
        for (Piece piece : ride.terrain().pieces()) {
            int parts = (int) Math.ceil(piece.lengthM());
            fine.addAll(Collections.nCopies(parts, new Piece(piece.lengthM() / parts, piece.grade())));
        }
        Ride finer = Rides.of(new Profile(0, fine), ride.rider());
        double seconds = RideModel.predict(ride).timeS();
        assertEquals(RideModel.predict(finer).timeS(), seconds, 0.02 * seconds);
    }

    private static RiderPlan withPower(RiderPlan plan, double watts) {
        return new RiderPlan(
                RiderPlan.usual(watts, plan.cadence(), 50).power(),
                plan.coastingGrade(),
                plan.downhillCapKmh(),
                plan.cadence(),
                200,
                plan.walkingPaceKmh());
    }
}
