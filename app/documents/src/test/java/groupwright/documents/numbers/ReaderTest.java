package groupwright.documents.numbers;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReaderTest {
    private final Reader english = new Reader(Locale.ENGLISH);
    private final Reader german = new Reader(Locale.GERMAN);

    // ISO 80000-1 asks for a small space between groups of three digits (from memory)
    @ParameterizedTest(name = "{0} with {1} decimals")
    @CsvSource(textBlock = """
            1234.5,      1, 1234.5,         '1234,5'
            12345.678,   2, 12\u2009345.68, '12\u2009345,68'
            1234567,     0, 1\u2009234\u2009567, 1\u2009234\u2009567
            -0.04,       1, 0.0,            '0,0'
            -0.06,       1, \u22120.1,      '\u22120,1'
            0.5,         0, 1,              1
            24,          6, 24,             24
            100.5,       6, 100.5,          '100,5'
            0,           6, 0,              0
            """)
    void numbersAreGroupedAndSigned(double value, int decimals, String inEnglish, String inGerman) {
        assertEquals(inEnglish, english.number(value, decimals));
        assertEquals(inGerman, german.number(value, decimals));
    }

    @Test
    void marginsAlwaysShowTheirSign() {
        assertEquals("+0.7", english.signed(0.72, 1));
        assertEquals("\u22122.0", english.signed(-2.04, 1));
        assertEquals("0.0", english.signed(0.01, 1));
    }

    @Test
    void exactNumbersAreNotPadded() {
        assertEquals("0.016", english.exact(0.016));
        assertEquals("2312", english.exact(2312.0));
        assertEquals("0.1", english.exact(0.1));
    }

    @Test
    void daysAreWrittenOut() {
        assertEquals("9 March 2026", english.day(LocalDate.of(2026, 3, 9)));
        assertEquals("9. März 2026", german.day(LocalDate.of(2026, 3, 9)));
    }
}
