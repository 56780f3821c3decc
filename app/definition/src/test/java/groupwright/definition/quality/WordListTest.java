package groupwright.definition.quality;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

class WordListTest {
    @Test
    void aLineHasPhraseSourceAndAdvice() {
        WordList list = WordList.parse(
                "a.txt",
                List.of("# Source", "reason = \"{words}\" = x", "", "[words]", "as far ; iso ; Say ; how far."));
        assertEquals("\"{words}\" = x", list.text("reason").text());
        assertEquals(List.of(new Entry("as far", "iso", "Say ; how far.")), list.section("words"));
        assertEquals(Set.of(), list.set("except"));
    }

    @Test
    void aWordWithoutSourceIsRefusedWithItsPlace() {
        String message = assertThrows(
                        IllegalArgumentException.class,
                        () -> WordList.parse("a.txt", List.of("[words]", "best ; iso", "finest")))
                .getMessage();
        assertTrue(message.startsWith("a.txt:3: \"finest\" names no known source"), message);
    }

    @Test
    void aLineBeforeTheFirstSectionIsAText() {
        String message = assertThrows(
                        IllegalArgumentException.class, () -> WordList.parse("a.txt", List.of("reason: x")))
                .getMessage();
        assertTrue(message.startsWith("a.txt:1: "), message);
    }

    @Test
    void theLongestPhraseWinsAndAnExceptionCoversWhatItHolds() {
        WordList list = WordList.parse(
                "a.txt",
                List.of("[words]", "most ; iso", "almost always ; iso", "almost ; incose", "[except]", "at most"));
        List<Token> tokens = Tokenizer.tokens("almost always at most most, most-used almost", Set.of());
        List<String> found = list.phrases().in(tokens, 0, tokens.size()).stream()
                .map(match -> match.entry().phrase() + "@" + match.first())
                .toList();
        assertEquals(List.of("almost always@0", "most@4", "almost@8"), found);
    }

    /** A text with a place nobody fills would fail only when its check speaks. */
    @Test
    void everyTextOfTheEnglishListsCanBeFilled() {
        Set<String> known =
                Set.of("words", "subject", "rest", "binding", "count", "items", "ordered", "condition", "response");
        Language.of(Locale.ENGLISH).checks().values().forEach(list -> {
            list.texts()
                    .values()
                    .forEach(text -> text.filled(place -> {
                        assertTrue(known.contains(place), list.name() + ": {" + place + "}");
                        return "";
                    }));
            list.section("words")
                    .forEach(entry -> new Template(entry.advice()).filled(place -> {
                        assertTrue(Set.of("words", "subject", "rest").contains(place), list.name() + ": " + entry);
                        return "";
                    }));
        });
    }
}
