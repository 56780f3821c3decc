package groupwright.definition.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import groupwright.definition.record.Invalid;
import groupwright.definition.record.Settings;
import org.junit.jupiter.api.Test;

/** Which parameters may be left out, and which values are refused. */
class ParameterTest {
    private static final Figure FIGURE = Figure.named("steepness", "Steepness")
            .with(Parameter.word("climb", "the climb"))
            .with(Parameter.number("grade", 8, "the grade").within(0, 40))
            .with(Parameter.optionalNumber("cadence", "left out, the riders' own")
                    .within(10, 200))
            .with(Parameter.number("mass", "the mass").within(1, Double.POSITIVE_INFINITY))
            .formula("none")
            .source("none")
            .example("steepness climb=wall", "0")
            .computedBy(in -> Quantity.of(0, Unit.NONE));

    private static Ask ask(String text) {
        return new Ask(
                FIGURE, Subject.NONE, FigureText.parse("steepness " + text).parameters());
    }

    private static String refusal(String text) {
        return assertThrows(Invalid.class, () -> ask(text)).getMessage();
    }

    @Test
    void usualValuesAreFilledInAndOptionalOnesLeftOut() {
        Settings parameters = ask("climb=wall mass=3").parameters();
        assertEquals("climb=wall grade=8 mass=3", parameters.toString());
        assertEquals(
                "steepness climb=wall mass=3",
                ask("climb=wall mass=3.0 grade=8.0").toString());
        assertEquals(
                "60.5",
                ask("climb=wall mass=3 cadence=60.50")
                        .parameters()
                        .get("cadence")
                        .orElseThrow());
    }

    @Test
    void anAskWithAnOptionalParameterIsAnother() {
        assertEquals(ask("climb=wall mass=3 grade=8"), ask("mass=3 climb=wall"));
        assertEquals(
                "steepness cadence=60 climb=wall mass=3",
                ask("climb=wall cadence=60 mass=3").toString());
    }

    @Test
    void whatMustBeSaidIsAskedFor() {
        assertEquals("climb: is not given; add climb=…, the climb", refusal("mass=3"));
    }

    @Test
    void numbersOutsideTheirLimitsAreRefusedWithThem() {
        assertEquals("cadence: 9 is out of its limits; write 10 to 200", refusal("climb=a mass=3 cadence=9"));
        assertEquals("cadence: 200.1 is out of its limits; write 10 to 200", refusal("climb=a mass=3 cadence=200.1"));
        assertEquals("mass: 0 is out of its limits; write at least 1", refusal("climb=a mass=0"));
        assertEquals("grade: \"steep\" is no number; write for example grade=8", refusal("climb=a mass=3 grade=steep"));
    }
}
