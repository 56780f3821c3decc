package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Band;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Invalid;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Riding figures against elementary mechanics. */
class RidingFiguresTest {
    /** Riders of 80 kg with 200 W and no rolling resistance, on a wheel of 2 m; little air, so that slopes decide. */
    private static Asking about() {
        return Asking.about(Asking.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"), Asking.record("G-001", """
                        "riderMass_kg": 65, "bikeMass_kg": 10, "luggage_kg": 5, "rollingResistance": 0,
                        "dragArea_m2": 0.05, "rollOut_mm": 2000, "efficiency": 1, "powerHour_W": 200,
                        "cadenceLeast_rpm": 60, "cadenceMost_rpm": 100, "climbs": [{"id": "up", "grade_pct": 20}]"""));
    }

    @Test
    void aClimbTakesWeightTimesRise() {
        // v = 200 W / (80 kg · 9.81 m/s² · sin(atan 0.2)) = 1.2996 m/s less 0.1 % for the air; 2 m per turn
        Asking asking = about();
        assertEquals(4.679, asking.value("climb-speed C-001 G-001 climb=up"), 0.01);
        assertEquals(38.99, asking.value("climb-cadence C-001 G-001 climb=up"), 0.08);
        assertEquals("", asking.quantity("climb-speed C-001 G-001 climb=up").remark());
    }

    @Test
    void belowWalkingSpeedTheAnswerSaysWalks() {
        Address walking = Address.parse("project.walkingSpeed_kmh").orElseThrow();
        Asking brisk = new Asking(about().ledger.definition().with(walking, Optional.of(Amount.of(4.7))));
        assertEquals(
                "walks", brisk.quantity("climb-cadence C-001 G-001 climb=up").remark());
        assertEquals("walks", brisk.quantity("climb-speed C-001 G-001 climb=up").remark());
        assertEquals(
                "walks", brisk.quantity("steepest-climb C-001 G-001 cadence=30").remark());
        assertEquals("", brisk.quantity("steepest-climb C-001 G-001 cadence=60").remark());
    }

    @ParameterizedTest(name = "{0} rpm")
    @ValueSource(ints = {40, 60, 90})
    void onTheSteepestClimbTheCadenceIsTheOneAskedFor(int cadence) {
        double grade = about().value("steepest-climb C-001 G-001 cadence=" + cadence);
        Asking there = Asking.about(
                Asking.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"),
                Asking.record("G-001", """
                        "riderMass_kg": 80, "bikeMass_kg": 3, "rollingResistance": 0, "dragArea_m2": 0.05,
                        "rollOut_mm": 2000, "efficiency": 1, "powerHour_W": 207.5,
                        "climbs": [{"id": "up", "grade_pct": %s}]""".formatted(grade)));
        // weight and power both 83/80 of before: the same speed but for the air's small share
        assertEquals(cadence, there.value("climb-cadence C-001 G-001 climb=up"), 0.02 * cadence);
    }

    @Test
    void theUsualCadenceIsTheRiders() {
        Asking asking = about();
        assertEquals(asking.value("steepest-climb C-001 G-001 cadence=60"), asking.value("steepest-climb C-001 G-001"));
        assertEquals(24, asking.value("spin-out-speed C-001 G-001"), 1e-9); // 4 m · 100 rpm
    }

    @Test
    void noSlopeIsSteepEnoughForMuchPowerAtALowCadence() {
        // at 5 rpm the wheel pushes with 200 W / 0.167 m/s = 1200 N, more than the weight
        var missing = about().missing("steepest-climb C-001 G-001 cadence=5").get(0);
        assertTrue(missing.remedy().contains("higher cadence"), missing.remedy());
    }

    @Test
    void heldSpeedSolvesTheAirsPower() {
        // ½ · 1.2 · 0.05 · v³ = 200 W: v = 18.821 m/s = 67.75 km/h, at 4 m per turn 282 rpm
        var held = about().quantity("held-speed C-001 G-001");
        assertEquals(67.755, held.value(), 0.001);
        assertEquals("282 rpm in the highest gear", held.remark());
    }

    @Test
    void aBandedInputGivesABand() {
        Asking asking = about();
        assertEquals(Band.NOT_STATED, asking.band("spin-out-speed C-001 G-001"));
        Asking banded = Asking.about(
                Asking.record("C-001", "\"rings\": [30], \"cogs\": [15, 30]"), Asking.record("G-001", """
                        "rollOut_mm": {"value": 2000, "plusMinus": 20}, "cadenceMost_rpm": 100"""));
        Band.Between band = assertInstanceOf(Band.Between.class, banded.band("spin-out-speed C-001 G-001"));
        assertEquals(23.76, band.low(), 1e-9); // 1 % of 24 km/h
        assertEquals(24.24, band.high(), 1e-9);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
        spin-out-speed C-001 G-001 cadence=0,    out of its limits
        steepest-climb C-001 G-001 cadence=-60,  out of its limits
        spin-out-speed C-001 G-001 cadence=fast, is no number
        climb-cadence C-001 G-001,               is not given
        largest-step C-001 from-teeth=-1,        out of its limits
        """)
    void parametersOutsideTheirLimitsAreRefused(String ask, String wrong) {
        Asking asking = about();
        Invalid refused = assertThrows(Invalid.class, () -> asking.ask(ask));
        assertTrue(refused.getMessage().contains(wrong), refused.getMessage());
    }
}
