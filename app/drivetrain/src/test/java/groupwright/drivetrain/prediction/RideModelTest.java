package groupwright.drivetrain.prediction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.PowerBalance;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.Piece;
import groupwright.drivetrain.terrain.Profile;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RideModelTest {
    @ParameterizedTest(name = "{0} W on {1}")
    @CsvSource(textBlock = """
            # on a long even road the speed becomes that of the steady power balance (Martin et al. 1998)
            200, 0
            200, 0.05
            300, 0.1
            150, -0.01
            """)
    void longEvenRoadsAreRiddenAtTheSteadySpeed(double watts, double grade) {
        Piece piece = new Piece(5000, grade);
        Prediction prediction = RideModel.predict(Rides.of(Profile.of(piece, piece), Rides.constantPower(watts)));
        double secondHalfS = prediction.times().endS(1) - prediction.times().endS(0);
        double steady = PowerBalance.speedMps(Rides.SYSTEM, Air.still(1.2), grade, watts);
        assertEquals(steady, 5000 / secondHalfS, 1e-5 * steady);
    }

    @Test
    void theDownhillCapIsKeptAndBraked() {
        RiderPlan plan = RiderPlan.usual(200, Rides.HABITS, 40);
        Prediction prediction =
                RideModel.predict(Rides.of(Profile.of(new Piece(200, -0.1), new Piece(3000, -0.1)), plan));
        double seconds = prediction.times().endS(1) - prediction.times().endS(0);
        assertEquals(40, 3000 / seconds * 3.6, 0.5);
        assertEquals(prediction.timeS(), prediction.coastingS(), 1e-9);
        assertTrue(prediction.energy().brakingJ() > 0.4 * -prediction.energy().slopeJ());
        assertEquals(1, prediction.comfortShare());
    }

    @Test
    void tooSteepIsWalked() {
        RiderPlan plan = RiderPlan.usual(100, Rides.HABITS, 50);
        Prediction prediction = RideModel.predict(Rides.of(Profile.of(new Piece(300, 0.3)), plan));
        assertTrue(prediction.walkingS() > 0.99 * prediction.timeS());
        assertTrue(prediction.comfortShare() < 0.01);
        // on foot the same power lifts the weight: 105 W * 0.96 / (m g (sin + Crr cos))
        double steadyMps =
                105 * 0.96 / (85 * 9.81 * Math.sin(Math.atan(0.3)) + 0.006 * 85 * 9.81 * Math.cos(Math.atan(0.3)));
        assertEquals(steadyMps, 300 / prediction.timeS(), 0.05);
    }

    @Test
    void withoutALowGearTheRiderGrinds() {
        GearSet tall = GearSet.of(Crankset.of(50), Cassette.of(21));
        Ride ride = Ride.of(
                Profile.of(new Piece(2000, 0.08)),
                tall,
                Rides.WHEEL,
                Rides.SYSTEM,
                Air.still(1.2),
                RiderPlan.usual(250, Rides.HABITS, 50));
        Prediction prediction = RideModel.predict(ride);
        assertTrue(prediction.cadence().grindingS() > 0.9 * prediction.timeS());
        assertEquals(0, prediction.shifts().actions());
        assertEquals(0, prediction.comfortShare(), 0.02);
    }

    @Test
    void zeroPowerWalksTheFlatAndRollsDown() {
        RiderPlan plan = RiderPlan.usual(0, Rides.HABITS, 50);
        Prediction flat = RideModel.predict(Rides.of(Profile.of(new Piece(100, 0)), plan));
        assertTrue(flat.walkingS() > 0.9 * flat.timeS());
        assertEquals(0, flat.energy().crankJ());
        assertEquals(1, flat.averageKmh(), 0.2);
        Prediction down = RideModel.predict(Rides.of(Profile.of(new Piece(1000, -0.05)), plan));
        assertEquals(0, down.walkingS());
        assertTrue(down.averageKmh() > 25);
    }

    @Test
    void aGentleDescentThatDoesNotRollIsPedalled() {
        RiderPlan plan = new RiderPlan(Rides.constantPower(100).power(), 0, 50, Rides.HABITS, 60, 4.5);
        Ride ride =
                Rides.with(Rides.of(Profile.of(new Piece(5000, -0.01)), plan), RidingSystem.plain(85, 0.02, 0.4, 0.96));
        Prediction prediction = RideModel.predict(ride);
        assertEquals(0, prediction.walkingS());
        assertTrue(prediction.averageKmh() > 15);
    }

    @Test
    void withNothingToHoldItBackTheRideStillEnds() {
        Ride ride = Rides.with(
                Rides.of(Profile.of(new Piece(1_000_000, -0.5)), Rides.constantPower(300)),
                RidingSystem.plain(80, 0, 0, 1));
        Prediction prediction = RideModel.predict(ride);
        assertTrue(Double.isFinite(prediction.timeS()) && prediction.timeS() > 0);
        Ride gale = new Ride(
                ride.terrain(),
                ride.gears(),
                ride.wheel(),
                Rides.SYSTEM,
                new Air(10, 100),
                ride.rider(),
                ride.policy());
        assertEquals(1, RideModel.predict(gale).averageKmh(), 1);
    }

    @Test
    void ringsWithEqualRatiosDoNotSetTheRiderShiftingForEver() {
        GearSet alike = GearSet.of(Crankset.of(20, 40), Cassette.of(10, 20, 40));
        Ride ride = Ride.of(
                Profile.of(new Piece(20_000, 0.001)),
                alike,
                Rides.WHEEL,
                Rides.SYSTEM,
                Air.still(1.2),
                RiderPlan.usual(200, Rides.HABITS, 50));
        assertTrue(RideModel.predict(ride).shifts().actions() < 6);
    }

    @Test
    void nobodyPedalsFasterThanHeCan() {
        GearSet low = GearSet.of(Crankset.of(24), Cassette.of(24));
        Ride ride = Ride.of(
                Profile.of(new Piece(2000, 0)),
                low,
                Rides.WHEEL,
                Rides.SYSTEM,
                Air.still(1.2),
                RiderPlan.usual(400, Rides.HABITS, 50));
        Prediction prediction = RideModel.predict(ride);
        // 120 rpm, and nothing is left 5 % above it, in 2.2 m for each turn
        assertTrue(prediction.averageKmh() > 0.95 * 120 * 2.2 * 0.06);
        assertTrue(prediction.averageKmh() < 1.05 * 120 * 2.2 * 0.06);
        assertEquals(13, prediction.cadence().binS().size());
    }

    @Test
    void aGearIsHeldAsLongAsThePolicySays() {
        Profile hills = Rides.terrain(new Random(7));
        Ride ride = Rides.of(hills, RiderPlan.usual(200, Rides.HABITS, 50));
        Ride patient = new Ride(
                hills,
                ride.gears(),
                ride.wheel(),
                ride.system(),
                ride.air(),
                ride.rider(),
                new ShiftPolicy(1e6, 0.08, 0.1, 0.02));
        assertTrue(RideModel.predict(ride).shifts().actions() > 20);
        assertEquals(1, RideModel.predict(patient).shifts().actions());
    }

    @Test
    void largeSkipsAreOneAction() {
        // from a fast flat onto a wall: the policy may cross several cogs at once
        RiderPlan plan = RiderPlan.usual(250, Rides.HABITS, 60);
        Prediction prediction =
                RideModel.predict(Rides.of(Profile.of(new Piece(3000, -0.02), new Piece(500, 0.15)), plan));
        assertTrue(prediction.shifts().cogs() > prediction.shifts().actions());
        assertEquals(0, prediction.shifts().front());
    }

    @Test
    void nonsenseIsRefusedInWords() {
        Profile flat = Profile.of(new Piece(100, 0));
        assertThrows(IllegalArgumentException.class, () -> RidingSystem.plain(0, 0.006, 0.4, 0.96));
        assertThrows(IllegalArgumentException.class, () -> Rides.of(flat, Rides.constantPower(1e6)));
        assertThrows(IllegalArgumentException.class, () -> new CadenceHabits(60, 50, 90, 120));
        assertThrows(IllegalArgumentException.class, () -> RiderPlan.usual(Double.NaN, Rides.HABITS, 50));
        assertThrows(IllegalArgumentException.class, () -> RiderPlan.usual(200, Rides.HABITS, 0));
        Ride ride = Rides.of(flat, Rides.constantPower(100));
        var error = assertThrows(
                IllegalArgumentException.class,
                () -> new Ride(
                        flat,
                        ride.gears(),
                        ride.wheel(),
                        ride.system(),
                        new Air(1.2, 500),
                        ride.rider(),
                        ride.policy()));
        assertEquals("the headwind must lie between -100.0 and 100.0 m/s, was 500.0", error.getMessage());
    }
}
