package groupwright.definition.figures;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.ExampleProject;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.record.Address;
import groupwright.definition.record.Definition;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An input that is not there is named by its address, with what to do. */
class MissingInputsTest {
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
        capacity-margin C-901                   | C-901.derailleur                        | C-901.derailleur.declaredCapacity_teeth | declares
        capacity-margin C-901                   | C-901.derailleur.declaredCapacity_teeth | C-901.derailleur.declaredCapacity_teeth | declares
        capacity-slack C-901                    | C-901.derailleur.declaredCapacity_teeth | C-901.derailleur.declaredCapacity_teeth | declares
        side-travel C-901                       | C-901.derailleur.overshootSmallest_mm   | C-901.derailleur.overshootSmallest_mm   | beyond the smallest
        side-travel C-901                       | C-901.derailleur.overshootLargest_mm    | C-901.derailleur.overshootLargest_mm    | beyond the largest
        climb-cadence C-901 G-901 climb=wall    | G-901.riderMass_kg                      | G-901.riderMass_kg                      | rider's weight
        climb-speed C-901 G-901 climb=wall      | G-901.bikeMass_kg                       | G-901.bikeMass_kg                       | bike's weight
        held-speed C-901 G-901                  | G-901.rollingResistance                 | G-901.rollingResistance                 | rolling resistance
        held-speed C-901 G-901                  | G-901.dragArea_m2                       | G-901.dragArea_m2                       | drag area
        held-speed C-901 G-901                  | G-901.powerHour_W                       | G-901.powerHour_W                       | for an hour
        climb-cadence C-901 G-901 climb=wall    | G-901.powerHour_W                       | G-901.powerHour_W                       | for an hour
        climb-cadence C-901 G-901 climb=wall    | G-901.climbs.wall                       | G-901.climbs                            | no climb wall; add it
        steepest-climb C-901 G-901              | G-901.cadenceLeast_rpm                  | G-901.cadenceLeast_rpm                  | cadence
        steepest-climb C-901 G-901              | G-901.powerHour_W                       | G-901.powerHour_W                       | for an hour
        spin-out-speed C-901 G-901              | G-901.cadenceMost_rpm                   | G-901.cadenceMost_rpm                   | cadence
        mass-basic C-901                        | P-902.mass_g                            | P-902.mass_g                            | weigh the part
        mass-predicted C-901                    | P-903.mass_g                            | P-903.mass_g                            | weigh the part
        mass-p90 C-901                          | P-903.mass_g                            | P-903.mass_g                            | weigh the part
        mass-margin C-901 budget=1000           | P-904.mass_g                            | P-904.mass_g                            | weigh the part
        part-mass-spread P-904                  | P-904.mass_g                            | P-904.mass_g                            | weigh the part
        unit-cost C-901                         | P-903.unitCost_minor                    | P-903.unitCost_minor                    | one piece costs
        unit-cost C-901                         | project.lifeVolume                      | project.lifeVolume                      | how many sets
        test-result C-901 R-901 quantity=lever-force | R-901.results.t1                   | R-901.results                           | record a result of lever-force for C-901
        """)
    void anEmptyFieldIsNamed(String ask, String emptied, String missing, String remedy) {
        List<MissingInput> inputs = without(emptied).missing(ask);
        assertEquals(1, inputs.size(), inputs.toString());
        assertEquals(missing, inputs.get(0).address().toString());
        assertTrue(inputs.get(0).remedy().contains(remedy), inputs.get(0).remedy());
    }

    private static Asking without(String... addresses) {
        Definition definition = ExampleProject.definition();
        for (String address : addresses) {
            definition = definition.with(Address.parse(address).orElseThrow(), Optional.empty());
        }
        return new Asking(definition);
    }

    @Test
    void theWheelMayBeEnteredEitherWay() {
        assertEquals(8, without("G-901.beadSeat_mm", "G-901.tyre_mm").value("highest-development C-901 G-901"), 1e-12);
        // ISO 5775: 622 + 2 · 57 = 736 mm, pi · 0.736 m · 40/10
        assertEquals(9.24885, without("G-901.rollOut_mm").value("highest-development C-901 G-901"), 5e-5);
    }

    @Test
    void allThatIsMissingIsNamedAtOnce() {
        Asking asking = without(
                "G-901.rollOut_mm", "G-901.beadSeat_mm", "G-901.tyre_mm", "G-901.riderMass_kg", "G-901.powerHour_W");
        assertEquals(
                List.of("G-901.beadSeat_mm", "G-901.powerHour_W", "G-901.riderMass_kg", "G-901.tyre_mm"),
                addresses(asking, "climb-cadence C-901 G-901 climb=wall"));
        assertEquals(
                List.of("P-902.mass_g", "P-904.mass_g"),
                addresses(without("P-902.mass_g", "P-904.mass_g"), "mass-predicted C-901"));
    }

    private static List<String> addresses(Asking asking, String ask) {
        return asking.missing(ask).stream()
                .map(input -> input.address().toString())
                .toList();
    }

    @Test
    void spacingsMayBeMissing() {
        Definition definition = ExampleProject.definition()
                .with(
                        Address.of(
                                Asking.record("C-901", "\"rings\":[30],\"cogs\":[10]")
                                        .id(),
                                "cogSpacing_mm"),
                        Optional.of(List.of()));
        assertEquals(List.of("C-901.cogSpacing_mm"), addresses(new Asking(definition), "side-travel C-901"));
    }

    @Test
    void aClimbsOwnPowerGoesBeforeTheHoursPower() {
        Asking asking =
                Asking.about(Asking.record("C-001", "\"rings\":[30],\"cogs\":[30]"), Asking.record("G-001", """
                        "riderMass_kg": 70, "bikeMass_kg": 10, "rollingResistance": 0, "dragArea_m2": 0.05,
                        "rollOut_mm": 2000, "efficiency": 1,
                        "climbs": [{"id": "up", "grade_pct": 20, "power_W": 154}, {"id": "on", "grade_pct": 20}]"""));
        // 80 kg · 9.81 · sin(atan 0.2) = 153.9 N, so 154 W give nearly 1 m/s
        assertEquals(3.6, asking.value("climb-speed C-001 G-001 climb=up"), 0.01);
        assertEquals(
                "walks", asking.quantity("climb-speed C-001 G-001 climb=up").remark());
        assertEquals(
                "G-001.powerHour_W",
                asking.missing("climb-speed C-001 G-001 climb=on")
                        .get(0)
                        .address()
                        .toString());
        assertTrue(asking.missing("climb-speed C-001 G-001 climb=off")
                .get(0)
                .remedy()
                .contains("one of up, on"));
    }

    @Test
    void aSubjectThatIsNotThereIsNamed() {
        Asking asking = new Asking(ExampleProject.definition());
        assertEquals(List.of("C-999"), addresses(asking, "gear-range C-999"));
        assertEquals(List.of("C-999"), addresses(asking, "mass-basic C-999"));
        assertEquals(List.of("G-999"), addresses(asking, "lowest-development C-901 G-999"));
        assertEquals(List.of("R-999"), addresses(asking, "test-result C-901 R-999 quantity=x"));
        assertEquals(List.of("P-999"), addresses(asking, "part-mass-basic P-999"));
    }
}
