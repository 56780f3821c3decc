package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import groupwright.documents.trace.NumberedEntry;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FigurePlaceholderTest {
    private static final Bench BENCH = Bench.sample();

    /** 1 lb = 453.59237 g, exact by the international yard and pound agreement of 1959; C-002 weighs 1757 g in parts. */
    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            gear-range lead                        ~ 450.0\u202F%
            gear-range lead decimals=0             ~ 450\u202F%
            gear-range lead unit=none              ~ 450.0
            gear-range lead unit=%                 ~ 450.0\u202F%
            gear-range unit=none lead decimals=3   ~ 450.000
            mass-basic lead                        ~ 1757\u202Fg
            mass-basic lead unit=kg                ~ 1.757\u202Fkg
            mass-basic lead unit=lb decimals=3     ~ 3.874\u202Flb
            mass-basic lead unit=oz decimals=1     ~ 62.0\u202Foz
            """)
    void numbersAreShownAsTheAuthorWants(String query, String shown) {
        assertEquals(shown, BENCH.body("{{ " + query + " }}").strip());
    }

    @Test
    void theAnnexKeepsTheFiguresOwnAnswer() {
        List<NumberedEntry> entries =
                BENCH.document("{{ mass-basic lead unit=lb }}").trace().entries();
        assertEquals("1757\u202Fg", entries.get(0).entry().shown().text());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '~', textBlock = """
            gear-range lead unit=mm        ~ gear-range cannot be shown in "mm"; write unit= with one of % or none
            mass-basic lead unit=stone     ~ mass-basic cannot be shown in "stone"; write unit= with one of g, kg, lb, oz or none
            gear-range lead decimals=7     ~ decimals is "7"; write a whole number from 0 to 6
            gear-range lead decimals=one   ~ decimals is "one"; write a whole number from 0 to 6
            gear-range lead unit=% unit=%  ~ "unit=%" is given twice; give it once
            steps lead decimals=1          ~ steps gives no single number; leave unit= and decimals= out
            gears lead unit=               ~ unit is empty; write for example unit=mm, or unit=none
            """)
    void whatCannotBeShownIsOneSentence(String query, String sentence) {
        List<String> sentences = BENCH.sentences("{{ " + query + " }}");
        assertEquals(1, sentences.size(), sentences.toString());
        assertTrue(sentences.get(0).startsWith("t.md:1:1: " + sentence), sentences.get(0));
    }
}
