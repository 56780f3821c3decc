package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTextTest {
    /** Quotes as in RFC 4180, section 2; the apostrophe before what a spreadsheet would run: common practice, no source. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            plain         | plain
            10 12 14      | 10 12 14
            one, two      | "one, two"
            say "so" now  | "say ""so"" now"
            =1+1          | '=1+1
            +HYPERLINK(1) | '+HYPERLINK(1)
            -cmd          | '-cmd
            @sum,1        | "'@sum,1"
            -12.5         | -12.5
            +3            | +3
            """)
    void cellsAreSafe(String cell, String written) {
        assertEquals(written + ",end\n", new CsvText().row(List.of(cell, "end")).toString());
    }
}
