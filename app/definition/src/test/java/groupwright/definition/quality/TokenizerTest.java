package groupwright.definition.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TokenizerTest {
    private static List<Token> tokens(String text) {
        return Tokenizer.tokens(text, Set.of("approx", "fig"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # text | its tokens; common practice of writing, no source
            The 118-link chain.     | the 118 -link chain .
            1,830 g, 0.6 s.         | 1,830 g , 0.6 s .
            ISO 4210-8:2014         | iso 4210 -8 : 2014
            5-10 mm, 5 - 10 mm      | 5 -10 mm , 5 - 10 mm
            2 dB(A) 50rpm 3D        | 2 db ( a ) 50 rpm 3 d
            and/or TBC??? so...     | and / or tbc ? so …
            can’t riders’ 'x'       | can't riders ’ ' x '
            state‑of‑the  | state -of -the
            """)
    void wordsNumbersAndMarks(String text, String expected) {
        List<String> shown = tokens(text).stream()
                .map(token -> (token.isHyphenated() ? "-" : "") + token.text())
                .toList();
        assertEquals(expected, String.join(" ", shown));
    }

    @Test
    void aStopEndsASentenceOnlyBeforeACapitalAndNotInAnAbbreviation() {
        List<String> firsts =
                tokens("Fits 5 g. The next, e.g. Fig. 3 or approx. 4 m. Third. and on! 5 g? Last").stream()
                        .filter(Token::startsSentence)
                        .map(Token::text)
                        .toList();
        assertEquals(List.of("fits", "the", "third", "5", "last"), firsts);
    }

    @Test
    void positionsCountUtf16UnitsOfTheOriginal() {
        String text = "\ud83d\udeb2 İt so\u00adft e\u0301x";
        List<Token> tokens = tokens(text);
        assertEquals(
                List.of("\ud83d\udeb2", "İt", "so\u00adft", "e\u0301x"),
                tokens.stream()
                        .map(token -> text.substring(token.from(), token.to()))
                        .toList());
        assertEquals("soft", tokens.get(2).text());
    }
}
