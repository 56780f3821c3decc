package groupwright.workbench.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import groupwright.definition.record.Amount;
import groupwright.definition.record.Component;
import groupwright.definition.record.RiderGroup;
import groupwright.definition.record.Shape;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TypedNumbersTest {
    private static final Shape<RiderGroup> SHAPE = Shape.of(RiderGroup.class);

    private static AmountNotation notation(String field, Locale locale) {
        Component component = SHAPE.components().get(SHAPE.indexOf(field));
        return new AmountNotation(new FieldWords(locale), component, component.unit());
    }

    private static Typed read(String field, Locale locale, String text) {
        return notation(field, locale).read(text);
    }

    /** Group and decimal signs as in the Unicode locale data that Java carries. */
    @ParameterizedTest(name = "{0} is {1} ± {2}")
    @CsvSource(delimiter = '|', textBlock = """
            190            | 190     | 0
             190           | 190     | 0
            190 W          | 190     | 0
            190W           | 190     | 0
            0.016          | 0.016   | 0
            0,016          | 0.016   | 0
            95 ± 2         | 95      | 2
            95±2           | 95      | 2
            95 +/- 2       | 95      | 2
            95 +- 2,5 W    | 95      | 2.5
            0,5 ± 0.05     | 0.5     | 0.05
            12.5           | 12.5    | 0
            12,5           | 12.5    | 0
            007            | 7       | 0
            """)
    void allReadersTypeTheSame(String text, double value, double band) {
        for (Locale locale : new Locale[] {Locale.US, Locale.GERMANY, Locale.FRANCE, new Locale("de", "CH")}) {
            assertEquals(Typed.of(new Amount(value, band)), read("powerHour_W", locale, text), locale.toString());
        }
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource(delimiter = '|', textBlock = """
            12 500         | 12500
            12\u00a0500    | 12500
            12\u2009500    | 12500
            12\u202f500    | 12500
            12'500         | 12500
            1 500,5        | 1500.5
            1.500,5        | 1500.5
            1,500.5        | 1500.5
            12,345.25      | 12345.25
            """)
    void thousandsMayBeParted(String text, double value) {
        assertEquals(Typed.of(Amount.of(value)), read("yearly_km", Locale.UK, text));
        assertEquals(Typed.of(Amount.of(value)), read("yearly_km", Locale.GERMANY, text));
    }

    @Test
    void theReadersOwnSignForThousandsIsNotGuessed() {
        assertEquals(
                new Typed.Refused("“1,500” can be read in two ways. Type 1500 or 1.5."),
                read("yearly_km", Locale.UK, "1,500"));
        assertEquals(
                new Typed.Refused("“1.500” can be read in two ways. Type 1500 or 1,5."),
                read("yearly_km", Locale.GERMANY, "1.500"));
        assertEquals(Typed.of(Amount.of(1.5)), read("yearly_km", Locale.GERMANY, "1,500"));
        assertEquals(Typed.of(Amount.of(1.5)), read("yearly_km", Locale.UK, "1.500"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "19o",
                "--",
                "-",
                "1,5,2",
                "1.5.2",
                "1,50,000",
                "NaN",
                "Infinity",
                "∞",
                "1e3",
                "0x10",
                "12 34",
                "1 5",
                "١٩٠",
                "１９０",
                "±",
                "± 2",
                "95 ±",
                "95 ± 2 ± 1",
                "1/2",
                "190 kg",
                "W",
                ",",
                "5.",
                ".5",
                "1..5",
                "+5"
            })
    void whatIsNoNumberIsRefusedInWords(String text) {
        for (Locale locale : new Locale[] {Locale.UK, Locale.GERMANY}) {
            Typed.Refused refused = assertInstanceOf(Typed.Refused.class, read("powerHour_W", locale, text), text);
            assertEquals("Not a number: “" + text.strip() + "”. Type watts, for example 400.", refused.sentence());
        }
    }

    @Test
    void limitsAndLengthAreToldInWords() {
        assertEquals(
                new Typed.Refused("19 is out of its limits. Type 20 to 250 kg."),
                read("riderMass_kg", Locale.UK, "19"));
        assertEquals(
                new Typed.Refused("−5 is out of its limits. Type 0 to 700 W."), read("powerHour_W", Locale.UK, "−5"));
        assertEquals(
                new Typed.Refused("0,79 is out of its limits. Type 0,8 to 1,1."),
                read("loadedFactor", Locale.GERMANY, "0.79"));
        assertEquals(
                new Typed.Refused("The number has more digits than can be kept. Type at most 15."),
                read("powerHour_W", Locale.UK, "9".repeat(400)));
        assertEquals(
                new Typed.Refused("A band is at least 0. Type for example 95 ± 2."),
                read("powerHour_W", Locale.UK, "95 ± -2"));
    }

    @Test
    void emptyIsAllowedWhereTheFieldIsOptional() {
        assertEquals(Typed.empty(), read("powerHour_W", Locale.UK, "  "));
        assertEquals(
                new Typed.Refused("Luggage must not be empty. Type kilograms, for example 80."),
                read("luggage_kg", Locale.UK, ""));
    }

    /** What is shown reads back as the same value, in every language. */
    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE", "fr-FR", "de-CH", "hi-IN", "ar-EG", "tr-TR"})
    void shownNumbersReadBack(String tag) {
        Locale locale = Locale.forLanguageTag(tag);
        long seed = 20260309;
        Random random = new Random(seed);
        for (int i = 0; i < 3000; i++) {
            double scale = Math.pow(10, random.nextInt(5));
            double value = Math.round(random.nextDouble() * 100000 / scale * 10000) / 10000.0;
            double band = random.nextBoolean() ? 0 : Math.round(random.nextDouble() * 1000) / 1000.0;
            Amount amount = new Amount(value, band);
            AmountNotation notation = notation("yearly_km", locale);
            String shown = notation.shown(Optional.of(amount));
            assertEquals(Typed.of(amount), notation.read(shown), "seed " + seed + ", " + tag + ", shown " + shown);
        }
    }
}
