package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.Series;
import groupwright.definition.project.ProjectFiles;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Invalid;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RiderGroup;
import groupwright.drivetrain.gearing.Cassette;
import groupwright.drivetrain.gearing.Crankset;
import groupwright.drivetrain.gearing.Gear;
import groupwright.drivetrain.gearing.GearSet;
import groupwright.drivetrain.gearing.Wheel;
import groupwright.drivetrain.prediction.CadenceHabits;
import groupwright.drivetrain.prediction.GearUse;
import groupwright.drivetrain.prediction.Prediction;
import groupwright.drivetrain.prediction.Ride;
import groupwright.drivetrain.prediction.RideModel;
import groupwright.drivetrain.prediction.RiderPlan;
import groupwright.drivetrain.riding.Air;
import groupwright.drivetrain.riding.RidingSystem;
import groupwright.drivetrain.terrain.GradeBand;
import groupwright.drivetrain.terrain.Profiles;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Ride figures of the sample against the ride model fed from the records by hand, and what they may be asked. */
class RideFiguresTest {
    private static final Definition SAMPLE = sample();
    private static final Asking ASKING = new Asking(SAMPLE);

    private static Definition sample() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("samples/tarnbeck"))) {
            here = here.getParent();
        }
        return ProjectFiles.read(here.resolve("samples/tarnbeck")).definition().orElseThrow();
    }

    private static Prediction predicted(String concept, String group, double km, double headwindKmh) {
        Concept is = (Concept) SAMPLE.get(RecordId.parse(concept).orElseThrow()).orElseThrow();
        RiderGroup rides =
                (RiderGroup) SAMPLE.get(RecordId.parse(group).orElseThrow()).orElseThrow();
        GearSet gears = new GearSet(
                Crankset.of(is.rings().stream().mapToInt(i -> i).toArray()),
                Cassette.of(is.cogs().stream().mapToInt(i -> i).toArray()),
                is.excludedGears().stream()
                        .map(gear -> Gear.of(gear.ring(), gear.cog()))
                        .collect(Collectors.toSet()));
        CadenceHabits habits = new CadenceHabits(
                of(rides.cadenceLeast_rpm()),
                of(rides.cadencePreferredLow_rpm()),
                of(rides.cadencePreferredHigh_rpm()),
                of(rides.cadenceMost_rpm()));
        List<GradeBand> bands = rides.terrain().stream()
                .map(band -> new GradeBand(
                        band.from_pct().value() / 100,
                        band.to_pct().value() / 100,
                        band.share_pct().value()))
                .toList();
        double mass = of(rides.riderMass_kg())
                + of(rides.bikeMass_kg())
                + rides.luggage_kg().value();
        return RideModel.predict(Ride.of(
                Profiles.ofBands(1000 * km, 2000, bands),
                gears,
                Wheel.ofMarking(of(rides.beadSeat_mm()), of(rides.tyre_mm())),
                RidingSystem.plain(
                        mass,
                        of(rides.rollingResistance()),
                        of(rides.dragArea_m2()),
                        rides.efficiency().value()),
                new Air(1.2, headwindKmh / 3.6),
                RiderPlan.usual(of(rides.powerHour_W()), habits, of(rides.downhillCap_kmh()))));
    }

    private static double of(Optional<Amount> amount) {
        return amount.orElseThrow().value();
    }

    @ParameterizedTest
    @CsvSource({
        "C-001, G-001, 40, 0",
        "C-001, G-002, 25, 15",
        "C-002, G-002, 40, 0",
        "C-002, G-003, 12.5, -10",
        "C-003, G-001, 3, 0"
    })
    void theSampleRidesAsTheModelSays(String concept, String group, double km, double headwind) {
        Prediction ride = predicted(concept, group, km, headwind);
        String about = " %s %s ride-length=%s headwind=%s".formatted(concept, group, km, headwind);
        assertEquals(ride.averageKmh(), ASKING.value("average-speed" + about), 1e-9);
        assertEquals(100 * ride.comfortShare(), ASKING.value("cadence-comfort" + about), 1e-9);
        assertEquals(ride.shiftActionsPerHour(), ASKING.value("shift-actions" + about), 1e-9);
        assertEquals(ride.cogsPerHour(), ASKING.value("cogs-shifted" + about), 1e-9);
        assertEquals(ride.frontShiftsPerHour(), ASKING.value("front-shifts" + about), 1e-9);
        assertEquals(100 * ride.walkingS() / ride.timeS(), ASKING.value("walking-time" + about), 1e-9);
        assertEquals(100 * ride.cadence().grindingS() / ride.timeS(), ASKING.value("grinding-time" + about), 1e-9);
        assertEquals(ride.energy().crankJ() / 1000, ASKING.value("ride-work" + about), 1e-9);
        assertEquals(shares(ride, GearUse::timeS), values("gear-use" + about), "time");
        assertEquals(shares(ride, GearUse::distanceM), values("gear-use by=distance" + about), "distance");
        assertEquals(shares(ride, GearUse::crankWorkJ), values("gear-use by=work" + about), "work");
        assertEquals(shares(ride, GearUse::crankTurns), values("gear-use by=turns" + about), "turns");
        List<Double> bins = ride.cadence().binS();
        assertEquals(
                bins.stream()
                        .map(seconds -> rounded(100 * seconds / ride.cadence().pedallingS()))
                        .toList(),
                values("cadence-distribution" + about).stream()
                        .map(at -> at.split("=")[1])
                        .toList());
    }

    private static List<String> shares(Prediction ride, ToDoubleFunction<GearUse> part) {
        double total = ride.gearUse().stream().mapToDouble(part).sum();
        return ride.gearUse().stream()
                .map(use -> use.gear().ring().teeth() + "/" + use.gear().cog().teeth() + "="
                        + rounded(100 * part.applyAsDouble(use) / total))
                .toList();
    }

    private static List<String> values(String text) {
        return ((Series) ASKING.answer(text))
                .values().stream()
                        .map(at -> at.at() + "=" + rounded(at.value()))
                        .toList();
    }

    private static String rounded(double value) {
        return "%.6f".formatted(value);
    }

    @Test
    void theUsualRideIsFortyKilometresWithoutWind() {
        assertEquals(predicted("C-002", "G-002", 40, 0).averageKmh(), ASKING.value("average-speed C-002 G-002"), 1e-9);
    }

    /** The band is not stated, although rolling resistance states one: it would cost two predictions for each input. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "average-speed",
                "cadence-comfort",
                "shift-actions",
                "cogs-shifted",
                "front-shifts",
                "walking-time",
                "grinding-time",
                "ride-work"
            })
    void noBandIsStated(String figure) {
        assertInstanceOf(Band.NotStated.class, ASKING.band(figure + " C-002 G-002"));
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource(delimiter = '|', textBlock = """
            G-002.riderMass_kg            | G-002.riderMass_kg            | weight
            G-002.powerHour_W             | G-002.powerHour_W             | hour
            G-002.cadenceLeast_rpm        | G-002.cadenceLeast_rpm        | below which the riders grind
            G-002.cadencePreferredLow_rpm | G-002.cadencePreferredLow_rpm | lower end
            G-002.cadencePreferredHigh_rpm | G-002.cadencePreferredHigh_rpm | upper end
            G-002.cadenceMost_rpm         | G-002.cadenceMost_rpm         | at most
            G-002.tyre_mm                 | G-002.tyre_mm                 | tyre
            G-002.downhillCap_kmh         | G-002.downhillCap_kmh         | downhill
            """)
    void whatIsMissingIsNamed(String emptied, String missing, String remedy) {
        Asking asking = new Asking(SAMPLE.with(Address.parse(emptied).orElseThrow(), Optional.empty()));
        for (String figure : List.of("average-speed", "gear-use", "ride")) {
            var inputs = asking.missing(figure + " C-002 G-002");
            assertEquals(1, inputs.size(), inputs.toString());
            assertEquals(missing, inputs.get(0).address().toString());
            assertTrue(inputs.get(0).remedy().contains(remedy), inputs.get(0).remedy());
        }
    }

    @Test
    void allThatIsMissingIsNamedAtOnceAndTerrainToo() {
        Asking asking = Asking.about(
                Asking.record("C-001", "\"rings\": [30], \"cogs\": [15]"),
                Asking.record("G-001", "\"rollOut_mm\": 2000"));
        assertEquals(
                "[bikeMass_kg, cadenceLeast_rpm, cadenceMost_rpm, cadencePreferredHigh_rpm, cadencePreferredLow_rpm,"
                        + " downhillCap_kmh, dragArea_m2, powerHour_W, riderMass_kg, rollingResistance, terrain]",
                asking.missing("cadence-comfort C-001 G-001").stream()
                        .map(input -> input.address().field())
                        .toList()
                        .toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            G-002.cadencePreferredHigh_rpm | 60   | G-002.cadencePreferredLow_rpm | in this order
            project.walkingSpeed_kmh       | 15   | project.walkingSpeed_kmh      | from 1 to 10 km/h
            """)
    void whatTheModelCannotTakeIsNamed(String field, double value, String missing, String remedy) {
        Object amount = Amount.of(value);
        Address address = Address.parse(field).orElseThrow();
        Asking asking = new Asking(SAMPLE.with(address, Optional.of(amount)));
        var inputs = asking.missing("average-speed C-002 G-002");
        assertEquals(missing, inputs.get(0).address().toString());
        assertTrue(inputs.get(0).remedy().contains(remedy), inputs.get(0).remedy());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            average-speed C-002 G-002 ride-length=0   | 1 to 300
            average-speed C-002 G-002 ride-length=301 | 1 to 300
            average-speed C-002 G-002 headwind=61     | -60 to 60
            climb-speed C-002 G-002 climb=steep-12 headwind=-61 | -60 to 60
            gear-use C-002 G-002 by=luck              | time, distance, work, turns
            usable-gears C-002 B-001 chain-angle=21   | 0 to 20
            """)
    void aParameterOutOfItsLimitsIsOneSentence(String text, String limits) {
        assertTrue(assertThrows(Invalid.class, () -> ASKING.ask(text)).remedy().endsWith(limits));
    }

    @Test
    void windFromTheFrontSlowsAndFromBehindHelps() {
        for (String figure : List.of(
                "average-speed C-002 G-002", "climb-speed C-002 G-002 climb=forest-7", "held-speed C-002 G-002")) {
            double still = ASKING.value(figure);
            assertEquals(still, ASKING.value(figure + " headwind=0"));
            assertTrue(ASKING.value(figure + " headwind=20") < still, figure);
            assertTrue(ASKING.value(figure + " headwind=-20") > still, figure);
        }
    }

    @Test
    void oneCogNeverShifts() {
        Definition one = SAMPLE.with(Address.parse("C-002.cogs").orElseThrow(), Optional.of(List.of(20)));
        Asking asking = new Asking(one);
        assertEquals(0, asking.value("shift-actions C-002 G-002"));
        assertEquals(List.of(new Series.At("32/20", 100)), ((Series) asking.answer("gear-use C-002 G-002")).values());
        assertTrue(asking.value("cadence-comfort C-002 G-002") < ASKING.value("cadence-comfort C-002 G-002"));
    }

    @Test
    void withoutPowerTheRiderNeverPedals() {
        Asking asking =
                new Asking(SAMPLE.with(Address.parse("G-002.powerHour_W").orElseThrow(), Optional.of(Amount.of(0))));
        assertTrue(asking.value("walking-time C-002 G-002") > 50);
        assertEquals(0, asking.value("cadence-comfort C-002 G-002"));
        assertTrue(((Series) asking.answer("gear-use C-002 G-002"))
                .values().stream().allMatch(at -> at.value() == 0));
        assertEquals(List.of(), ((Series) asking.answer("cadence-distribution C-002 G-002")).values());
    }
}
