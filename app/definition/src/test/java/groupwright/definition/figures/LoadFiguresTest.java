package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Band;
import groupwright.definition.figure.ExampleProject;
import groupwright.definition.figure.Series;
import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tension, loss and wear of the example's ride, against sums that take another way. */
class LoadFiguresTest {
    private static final double PITCH_MM = 12.7;
    private static final Asking EXAMPLE = new Asking(ExampleProject.definition());

    private static Asking with(String address, Object value) {
        Definition definition = ExampleProject.definition();
        return new Asking(definition.with(Address.parse(address).orElseThrow(), Optional.of(value)));
    }

    @Test
    void peakTensionIsTorqueOverTheSmallestRing() {
        double radiusM = PITCH_MM / 1000 / 2 / Math.sin(Math.PI / 20);
        assertEquals(180 / radiusM, EXAMPLE.value("chain-tension C-901 G-901"), 1e-9);
        assertEquals(
                220 / radiusM, with("G-901.assistTorque_Nm", Amount.of(40)).value("chain-tension C-901 G-901"), 1e-9);
        // 16 CFR 1512.8: 8010 N
        assertEquals(8010 * radiusM / 180, EXAMPLE.value("tensile-factor C-901 G-901"), 1e-12);
    }

    private static double share(String by, String gear) {
        return ((Series) EXAMPLE.answer("gear-use C-901 G-901 by=" + by))
                        .values().stream()
                                .filter(at -> at.at().equals(gear))
                                .findFirst()
                                .orElseThrow()
                                .value()
                / 100;
    }

    private static final String[] GEARS =
            "20/30 20/25 20/21 20/18 20/15 40/25 20/12 40/21 20/10 40/18 40/15 40/12 40/10".split(" ");

    private static double work(String gear) {
        return EXAMPLE.value("ride-work C-901 G-901") * 1000 * share("work", gear);
    }

    @Test
    void meanTensionIsWorkOverTheWayOfTheChain() {
        double turns = 0;
        for (var at : ((Series) EXAMPLE.answer("ride C-901 G-901")).values()) {
            if (at.at().endsWith(".turns")) {
                turns += at.value() * Integer.parseInt(at.at().split("/")[0]);
            }
        }
        assertEquals(
                EXAMPLE.value("ride-work C-901 G-901") * 1000 / (turns * PITCH_MM / 1000),
                EXAMPLE.value("chain-tension C-901 G-901 of=mean"),
                1e-6);
    }

    /** Speed and power drop out: for each km it is pedal work times the angle by which each link turns. */
    @Test
    void energyOnAPinIsPedalWorkTimesAngle() {
        double sum = 0;
        for (String gear : GEARS) {
            String[] wheels = gear.split("/");
            double angle = 2 * Math.PI / Integer.parseInt(wheels[0]) + 2 * Math.PI / Integer.parseInt(wheels[1]);
            sum += work(gear) * angle;
        }
        double perPin = 0.1 * 1.8 / PITCH_MM * sum / 112 / 40; // friction, pin radius / pitch, links, km
        assertEquals(perPin, EXAMPLE.value("articulation-energy C-901 G-901"), 1e-6 * perPin);
    }

    @Test
    void aRingsTeethShareTheirOwnBends() {
        double small = 0;
        double large = 0;
        for (String gear : GEARS) {
            small += gear.startsWith("20/") ? work(gear) : 0;
            large += gear.startsWith("40/") ? work(gear) : 0;
        }
        double angles = small * 2 * Math.PI / 20 + large * 2 * Math.PI / 40;
        double perTooth = 0.1 * 1.8 / PITCH_MM * angles / 60 / 40;
        assertEquals(perTooth, EXAMPLE.value("articulation-energy C-901 G-901 part=ring"), 1e-6 * perTooth);
    }

    @ParameterizedTest
    @ValueSource(strings = {"chain", "small-cogs", "big-cogs", "ring"})
    void againstItselfOnlyTheConditionsAreLeft(String part) {
        assertEquals(1, EXAMPLE.value("relative-wear C-901 G-901 part=" + part), 1e-12);
        // 60 % dry, 20 % dust at 1.5, 10 % mud at 3, 10 % cold at 1.2
        Definition wet = ExampleProject.definition();
        for (String[] share : new String[][] {{"dust", "20"}, {"mud", "10"}, {"cold", "10"}}) {
            wet = wet.with(
                    Address.parse("G-901." + share[0] + "_pct").orElseThrow(),
                    Optional.of(Amount.of(Double.parseDouble(share[1]))));
        }
        assertEquals(1.32, new Asking(wet).value("relative-wear C-901 G-901 part=" + part), 1e-9);
    }

    @Test
    void lossIsKnownWithinHalf() {
        double loss = EXAMPLE.value("articulation-loss C-901 G-901");
        assertEquals(new Band.Between(loss / 2, loss * 1.5), EXAMPLE.band("articulation-loss C-901 G-901"));
        assertTrue(loss > 0 && loss < 20, "a hundredth of 200 W, not a tenth: " + loss); // common practice, no source
    }

    @Test
    void largerWheelsLoseLess() {
        // Spicer et al., J. Mechanical Design 123(4), 2001: larger sprockets are more efficient
        Definition larger = ExampleProject.definition()
                .with(Address.parse("C-901.excludedGears").orElseThrow(), Optional.of(java.util.List.of()));
        larger = larger.with(Address.parse("C-901.rings").orElseThrow(), Optional.of(java.util.List.of(80, 40)));
        larger = larger.with(
                Address.parse("C-901.cogs").orElseThrow(), Optional.of(java.util.List.of(20, 24, 30, 36, 42, 50, 60)));
        assertTrue(new Asking(larger).value("articulation-loss C-901 G-901")
                < EXAMPLE.value("articulation-loss C-901 G-901"));
    }

    @Test
    void whatCannotBeComparedIsNamed() {
        assertTrue(EXAMPLE.missing("relative-wear C-901 G-901 against=C-777")
                .get(0)
                .remedy()
                .startsWith("there is no concept C-777"));
        assertTrue(EXAMPLE.missing("articulation-energy C-901 G-901 part=big-cogs big-from=60")
                .get(0)
                .remedy()
                .contains("no big-cogs are used"));
        assertEquals(
                "G-901.peakTorque_Nm",
                withoutTorque()
                        .missing("tensile-factor C-901 G-901")
                        .get(0)
                        .address()
                        .toString());
    }

    private static Asking withoutTorque() {
        return new Asking(ExampleProject.definition()
                .with(Address.parse("G-901.peakTorque_Nm").orElseThrow(), Optional.empty()));
    }
}
