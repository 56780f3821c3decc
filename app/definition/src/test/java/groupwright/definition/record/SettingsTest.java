package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingsTest {
    @ParameterizedTest
    @CsvSource({
        "14, 14",
        "14.0, 14",
        "14.50, 14.5",
        "-0, 0",
        "0.000, 0",
        "007, 7",
        "-3.10, -3.1",
        "100, 100",
        "1e3, 1e3",
        "+14, +14",
        "steep-12, steep-12",
        "999999999999999, 999999999999999",
        "0.000000000000001, 0.000000000000001"
    })
    void numbersStandInTheirShortestForm(String given, String kept) {
        Settings settings = Settings.NONE.with("p", given);
        assertEquals(kept, settings.get("p").orElseThrow());
        assertEquals(Settings.NONE.with("p", kept), settings);
        assertEquals(Settings.NONE.with("p", kept).hashCode(), settings.hashCode());
    }

    @Test
    void theOrderOfWritingDoesNotCount() {
        Settings one = Settings.NONE.with("b", "2").with("a", "1");
        assertEquals(Settings.NONE.with("a", "1.0").with("b", "2"), one);
        assertEquals("a=1 b=2", one.toString());
    }

    @Test
    void whatIsNoNameAndNoWordIsRefused() {
        for (String name : List.of("", "A", "1a", "a b", "a=b", "a".repeat(41))) {
            assertThrows(Invalid.class, () -> Settings.NONE.with(name, "1"));
        }
        for (String value : List.of("", " ", "two words", "line\n")) {
            assertThrows(Invalid.class, () -> Settings.NONE.with("p", value));
        }
    }

    @Test
    void givenValuesAreCopied() {
        var values = new java.util.TreeMap<String, String>();
        Settings settings = new Settings(values);
        values.put("p", "1");
        assertEquals(Settings.NONE, settings);
        assertThrows(
                UnsupportedOperationException.class, () -> settings.values().put("p", "1"));
    }
}
