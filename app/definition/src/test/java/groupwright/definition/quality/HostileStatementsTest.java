package groupwright.definition.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HostileStatementsTest {
    private static final int MEGABYTE = 1_000_000;

    private final StatementChecks checks = StatementChecks.in(Locale.ENGLISH);

    @ParameterizedTest
    @ValueSource(strings = {"or ", "a-", "shall be a, "})
    void aMegabyteIsRead(String piece) {
        assertReadable("The chain shall be " + piece.repeat(MEGABYTE / piece.length()));
    }

    /** What tempts a check to look far ahead or back, again and again. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "? ",
                ". ",
                "A. ",
                "x",
                "-",
                "1-",
                "1 ",
                "1,",
                "ISO ",
                "ISO 1 ",
                "all ",
                "not ",
                "when, ",
                "If a, ",
                "shall ",
                "be, ",
                "and be ",
                "must ",
                "to be ",
                "better ",
                "Better than. ",
                "steel ",
                "steel x y z ",
                "{words} ",
                "e.g. ",
                "\ud83d\udeb2",
                "\ud83d",
                "é",
                "e\u0301",
                "\u00ad",
                "\u200b",
                "'",
                "a'",
                "as far as ",
                "at ",
                "The gap shall be 5. "
            })
    void repetitionsAreRead(String piece) {
        for (String start : List.of("When a, ", "The chain must not ")) {
            assertReadable(start + piece.repeat(MEGABYTE / 40 / piece.length()));
        }
    }

    private void assertReadable(String text) {
        assertLieInTheText(text, checks.check(new Statement(text, Measure.NONE)));
    }

    @Test
    void findingsOfOneCheckAreBounded() {
        List<Finding> findings = checks.check(new Statement("The chain shall or ".repeat(500), Measure.GIVEN));
        long logic = findings.stream()
                .filter(finding -> finding.check() == Check.AMBIGUOUS_LOGIC)
                .count();
        assertEquals(StatementChecks.MOST_OF_A_CHECK, logic);
    }

    @Test
    void theAdviceStaysReadableForALongStatement() {
        String text = "The chain must " + "turn ".repeat(1000);
        for (Finding finding : checks.check(new Statement(text, Measure.NONE))) {
            assertTrue(finding.better().length() < 400, finding.better());
            assertTrue(finding.reason().length() < 400, finding.reason());
        }
    }

    @Test
    void aQuoteNeverCutsACharacterInTwo() {
        for (int shift = 0; shift < 4; shift++) {
            String text = "x".repeat(shift) + "\ud83d\udeb2 ".repeat(200);
            for (Finding finding : checks.check(new Statement("The " + text + " must turn.", Measure.NONE))) {
                String better = finding.better();
                assertEquals(better, new String(better.codePoints().toArray(), 0, (int)
                        better.codePoints().count()));
                assertTrue(
                        better.codePoints().noneMatch(point -> Character.getType(point) == Character.SURROGATE),
                        better);
            }
        }
    }

    @Test
    void positionsAlwaysLieInTheTextAndCutOutTheWords() {
        List<String> pieces = List.of(
                ("The chain shall must should be to not never without un unserviceable all every six list listed or and"
                                + " and/or , . ; ? ?? ... … ( ) [ ] { } - – ' ’ \" % ° € 5 1,830 0.6 12 2014 : / mm rpm"
                                + " ISO EN 4210-8 E1049-85 CFR if If when When while Where then possible practicable e.g."
                                + " etc. TBC better than best most at easy it This that steel forged G-2 İstanbul ﬁne"
                                + " straße е\u0301 \ud83d\udeb2 \ud83d \u00ad \u200b \u0000 Dž ǅ")
                        .split(" "));
        for (int seed = 0; seed < 3000; seed++) {
            Random random = new Random(seed);
            String text = IntStream.range(0, random.nextInt(25))
                    .mapToObj(i -> pieces.get(random.nextInt(pieces.size())) + (random.nextInt(6) == 0 ? "" : " "))
                    .collect(Collectors.joining());
            Statement statement = new Statement(text, Measure.values()[random.nextInt(2)]);
            int shown = seed;
            try {
                List<Finding> findings = checks.check(statement);
                assertLieInTheText(text, findings);
                assertEquals(findings, checks.check(statement), "same again");
                checks.pattern(statement);
            } catch (RuntimeException | AssertionError e) {
                throw new AssertionError("seed " + shown + ": " + text, e);
            }
        }
    }

    private static void assertLieInTheText(String text, List<Finding> findings) {
        int from = 0;
        for (Finding finding : findings) {
            assertTrue(finding.from() >= from, "sorted by place");
            from = finding.from();
            assertEquals(text.substring(finding.from(), finding.to()), finding.words());
            assertEquals(finding.words().isEmpty(), finding.check() == Check.EMPTY, finding::toString);
        }
    }
}
