package groupwright.definition.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class StatementChecksTest {
    private final StatementChecks checks = StatementChecks.in(Locale.ENGLISH);

    private List<String> found(String text) {
        return Example.written(checks.check(new Statement(text, Measure.NONE)));
    }

    private Finding only(Check check, String text) {
        List<Finding> found = checks.check(new Statement(text, Measure.NONE)).stream()
                .filter(finding -> finding.check() == check)
                .toList();
        assertEquals(1, found.size(), () -> check + " in " + text + ": " + found);
        return found.get(0);
    }

    static List<Example> examples() {
        return Example.all();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void theExamplesGiveExactlyTheFindingsBesideThem(Example example) {
        assertEquals(example.findings(), Example.written(checks.check(example.statement())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void theExamplesHaveTheEarsPatternBesideThem(Example example) {
        assertEquals(example.pattern(), checks.pattern(example.statement()));
    }

    @Test
    void theExamplesMeetEveryCheckButEmpty() {
        Set<Check> met = EnumSet.noneOf(Check.class);
        examples().forEach(example -> checks.check(example.statement()).forEach(finding -> met.add(finding.check())));
        assertEquals(EnumSet.complementOf(EnumSet.of(Check.EMPTY)), met);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            # Source: example words of ISO/IEC/IEEE 29148:2018, 5.2.7 (from memory)
            superlative,     best
            superlative,     most
            subjective,      user friendly
            subjective,      easy to use
            subjective,      cost effective
            vague-pronoun,   it
            vague-pronoun,   this
            vague-pronoun,   that
            ambiguous-word,  almost always
            ambiguous-word,  significant
            ambiguous-word,  minimal
            ambiguous-logic, or
            ambiguous-logic, and/or
            open-ended,      provide support
            open-ended,      but not limited to
            open-ended,      as a minimum
            comparative,     better than
            comparative,     higher quality
            loophole,        if possible
            loophole,        as appropriate
            loophole,        as applicable
            totality,        all
            totality,        always
            totality,        never
            totality,        every
            # Source: INCOSE Guide for Writing Requirements, rules 7 and 8 (secondary source)
            ambiguous-word,  some
            ambiguous-word,  any
            ambiguous-word,  several
            ambiguous-word,  many
            ambiguous-word,  about 5
            ambiguous-word,  close to
            ambiguous-word,  almost
            ambiguous-word,  approximately
            loophole,        as far as possible
            loophole,        where possible
            loophole,        if necessary
            loophole,        to the extent necessary
            """)
    void theSourcesWordsAreFoundInAnyCaseAndAtMarks(String check, String words) {
        for (String shown : List.of(words, words.toUpperCase(Locale.ROOT))) {
            for (String text : List.of("(" + shown + ")", "The chain: " + shown + ", gap.", "“" + shown + "”", shown)) {
                String expected = check + " \"" + shown + '"';
                assertTrue(found(text).contains(expected), () -> expected + " in " + text + ": " + found(text));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "The orange pulley shall turn at 70 rpm.",
                "The overall bestowed mostly itchy allowance shall be 3 mm.",
                "The gap shall be 12 % or less.",
                "The gap shall be at most 5 mm at all six positions of the list.",
                "The hub of the bike that the rider chose shall have 3 mm gap.",
                "The chain shall run with all listed cogs at 70 rpm.",
                "The cage shall open within 5 min.",
                "The range shall be 5 to 10 mm, 5 and 6 N, 1:2 in ratio, €5 or more.",
                "The gap shall be 10 (mm).",
                "The gap shall be 10 µm at −5 °C.",
                "The chain shall run 1 000 km until 2027."
            })
    void wordsInsideOtherWordsAndBoundedOnesAreLeftAlone(String text) {
        assertEquals(List.of(), found(text));
    }

    @Test
    void anEmptyStatementGivesOneFinding() {
        for (String text : List.of("", "  \t\n\u00a0")) {
            assertEquals(List.of("empty \"\""), found(text));
        }
        assertTrue(checks.pattern(new Statement("", Measure.NONE)).isEmpty());
    }

    @Test
    void theAdviceUsesTheStatementsOwnWords() {
        assertEquals(
                "If it binds, write \"Styling shall be of one colour\"; if it does not, keep it as a need or a note.",
                only(Check.NO_SHALL, "Styling to be of one colour.").better());
        assertEquals(
                "Name the part or the person first: \"The [part] shall weigh 262 g\".",
                only(Check.NO_SUBJECT, "Shall weigh 262 g.").better());
        assertEquals(
                "Write one statement for each: \"light\"; \"quiet\"; \"shift smoothly\".",
                only(Check.SEVERAL, "The drivetrain shall be light, quiet and shift smoothly.")
                        .better());
        assertEquals(
                "Write \"Where a battery is mounted, when it is on, the cage shall open\".",
                only(Check.EARS_ORDER, "When it is on, where a battery is mounted, the cage shall open.")
                        .better());
        assertEquals(
                "Put it first: \"If it is on, then the cage shall open\".",
                only(Check.EARS_ORDER, "The cage shall open if it is on.").better());
        assertEquals(
                "Write \"If it rains, then the cage shall open\"; for an expected event use \"When\".",
                only(Check.EARS_THEN, "If it rains, the cage shall open.").better());
        assertEquals(
                "Name the edition, for example \"ISO 4210-8:[year]\", or its issue and date.",
                only(Check.UNDATED_REFERENCE, "The crank shall pass ISO 4210-8.")
                        .better());
    }

    @Test
    void bracesInAStatementStayWhatTheyAre() {
        Finding finding = only(Check.NO_SHALL, "The {rest} must be {words} $1 \\ 5 mm.");
        assertTrue(finding.better().contains("\"The {rest} shall be {words} $1 \\ 5 mm\""), finding.better());
    }

    @Test
    void aCriterionBesideTheStatementIsAMeasure() {
        Statement statement = new Statement("The chain shall run.", Measure.GIVEN);
        assertEquals(List.of(), checks.check(statement));
        assertEquals(List.of("no-measure \"run\""), found(statement.text()));
    }

    @Test
    void aLanguageWithoutWordsFallsBackToEnglish() {
        StatementChecks other = StatementChecks.in(Locale.forLanguageTag("tlh-AQ"));
        assertEquals(Locale.ENGLISH, other.locale());
        assertEquals(Locale.ENGLISH, StatementChecks.in(Locale.CANADA).locale());
        assertEquals("Loophole", other.title(Check.LOOPHOLE));
    }

    @Test
    void everyCheckHasATitleOfItsOwn() {
        List<String> titles =
                EnumSet.allOf(Check.class).stream().map(checks::title).toList();
        assertEquals(titles.size(), Set.copyOf(titles).size());
        assertFalse(titles.contains(""));
    }
}
