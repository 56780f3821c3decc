package groupwright.workbench.notation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.definition.figure.Catalogue;
import groupwright.definition.record.Concept;
import groupwright.definition.record.Criterion;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.Milestone;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.Requirement;
import groupwright.definition.record.Shape;
import groupwright.workbench.Sample;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NotationsTest {
    private static final Definition TARNBECK = Sample.definition();
    private static final Catalogue CATALOGUE = Catalogue.ofServices();

    private static Notation of(Object object, String field, Locale locale) {
        Shape<?> shape = Shape.of(object.getClass());
        Notations notations = new Notations(locale, () -> TARNBECK, CATALOGUE);
        return notations.of(shape, shape.components().get(shape.indexOf(field)), object);
    }

    private static Entry record(String id) {
        return TARNBECK.get(new RecordId(id)).orElseThrow();
    }

    private static String refused(Typed typed) {
        return assertInstanceOf(Typed.Refused.class, typed).sentence();
    }

    @ParameterizedTest
    @ValueSource(strings = {"10-12-14", "10 12 14", "10, 12, 14", "10,12,14", "10;12;14", "10–12–14", " 10  12 14 "})
    void cogsAreTypedInManyWays(String text) {
        assertEquals(
                Typed.of(List.of(10, 12, 14)),
                of(record("C-002"), "cogs", Locale.GERMANY).read(text));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', textBlock = """
            10--14          | In “10--14” a value is missing between two signs. Type for example 10 12 14.
            10-12-x         | Not a whole number: “x”. Type for example 40.
            10-12.5         | Not a whole number: “12.5”. Type for example 40.
            10-99           | 99 is out of its limits. Type 5 to 80.
            ''              | Cogs has 0. Type 1 to 14.
            5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 | Cogs has 15. Type 1 to 14.
            """)
    void wrongCogsAreRefusedInWords(String text, String sentence) {
        assertEquals(sentence, refused(of(record("C-002"), "cogs", Locale.UK).read(text)));
    }

    /** Whether cogs rise is a rule of the record, which is asked when the value is meant to hold. */
    @Test
    void theOrderOfCogsIsLeftToTheRecord() {
        assertEquals(
                Typed.of(List.of(10, 12, 11)),
                of(record("C-002"), "cogs", Locale.UK).read("10-12-11"));
    }

    @Test
    void spacingsTakeADecimalComma() {
        Notation spacings = of(record("C-002"), "cogSpacing_mm", Locale.GERMANY);
        Typed two = spacings.read("3,93 ± 0,02; 3,6");
        assertEquals(two, spacings.read("3.93±0.02 3.6"));
        assertEquals("3,93 ± 0,02; 3,6", spacings.shown(((Typed.Value) two).value()));
    }

    @ParameterizedTest(name = "{1} in {0}")
    @CsvSource({
        "en-GB, 2026-03-09",
        "en-GB, 09/03/2026",
        "en-GB, 9/3/26",
        "en-US, 3/9/26",
        "en-US, 3/9/2026",
        "de-DE, 09.03.26",
        "de-DE, 9.3.2026",
        "de-DE, 2026-03-09"
    })
    void daysAreTypedAsIsoOrInTheShortForm(String tag, String text) {
        Typed day = of(record("M-001"), "date", Locale.forLanguageTag(tag)).read(text);
        assertEquals(Typed.of(LocalDate.of(2026, 3, 9)), day);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-02-30", "30.02.2026", "yesterday", "0026-03-09", "2026", "9.3.", "2026-3-9-1"})
    void whatIsNoDayIsRefused(String text) {
        assertEquals(
                "Not a day: “" + text + "”. Type for example 2026-03-09 or 9.3.2026.",
                refused(of(record("M-001"), "date", Locale.GERMANY).read(text)));
    }

    @Test
    void aRecordIsTypedByIdOrWords() {
        Notation lead = of(record("project"), "leadConcept", Locale.UK);
        Optional<RecordId> second = Optional.of(new RecordId("C-002"));
        String shown = lead.shown(second);
        assertEquals("C-002 " + record("C-002").title(), shown);
        for (String text : List.of("C-002", "c-2", "C2", shown, record("C-002").title())) {
            assertEquals(new Typed.Value(second), lead.read(text), text);
        }
        assertEquals(
                "There is no concept “C-077”. Type an id such as C-001 or words of its title.",
                refused(lead.read("C-077")));
        assertTrue(refused(lead.read("o")).startsWith("“o” fits "), refused(lead.read("o")));
        assertEquals(Typed.empty(), lead.read(""));
    }

    @Test
    void choicesReadAsSentences() {
        Notation comparator = of(criterion(), "comparator", Locale.UK);
        assertEquals("At least", comparator.shown(Optional.of(Criterion.Comparator.AT_LEAST)));
        assertEquals(Typed.of(Criterion.Comparator.AT_MOST), comparator.read("at most"));
        assertEquals(
                "“about” is none of the words allowed. Choose one of: at least, at most, between.",
                refused(comparator.read("about")));
    }

    private static Criterion criterion() {
        return ((Requirement) record("R-001")).criteria().get(0);
    }

    @Test
    void parametersAreHeldAgainstTheFigure() {
        Notation parameters = of(criterion(), "parameters", Locale.UK);
        assertInstanceOf(Typed.Value.class, parameters.read("climb = steep-12"));
        assertEquals(
                "“climb” is no parameter with a value. Type for example from-teeth=14.",
                refused(parameters.read("climb")));
        assertTrue(refused(parameters.read("climb=a\nwind=3")).startsWith("Wind is no parameter"));
        assertEquals("climb is given twice. Give it once.", refused(parameters.read("climb=a climb=b")));
    }

    @Test
    void figuresAreTypedByName() {
        Notation figure = of(criterion(), "figure", Locale.UK);
        assertEquals("Largest step", figure.shown(Optional.of("largest-step")));
        assertEquals(Typed.of("largest-step"), figure.read("largest STEP"));
        assertEquals(
                "There is no figure “Lagest step”. Did you mean “Largest step”?", refused(figure.read("Lagest step")));
    }

    @Test
    void textThatMustBeThereIsAskedFor() {
        assertEquals(
                "Title must not be empty. Type at least a word.",
                refused(of(record("R-001"), "title", Locale.UK).read("  ")));
    }

    @Test
    void aMilestoneMayHaveNoDate() {
        assertEquals(
                Typed.empty(),
                of((Milestone) record("M-001"), "date", Locale.UK).read(" "));
        assertEquals("32", of((Concept) record("C-002"), "rings", Locale.UK).shown(Optional.of(List.of(32))));
    }
}
