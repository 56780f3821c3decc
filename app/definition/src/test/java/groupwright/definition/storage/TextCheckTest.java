package groupwright.definition.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.problem.Problem;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextCheckTest {
    private static Optional<Problem> problem(byte[] bytes) {
        return TextCheck.problem("needs/N-001.json", "N-001", bytes);
    }

    private static String wrong(String hex) {
        return problem(HexFormat.of().parseHex(hex.replace(" ", "")))
                .map(Problem::wrong)
                .orElse("sound");
    }

    /** Bounds of the ranges in RFC 3629, section 4 (syntax of UTF-8 byte sequences), and one step beyond each. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            41 7f,            sound
            41 80,            is not UTF-8 (byte 80 at offset 1)
            41 c1 bf,         is not UTF-8 (byte C1 at offset 1)
            41 c2 80,         sound
            41 df bf,         sound
            41 c2 7f,         is not UTF-8 (byte C2 at offset 1)
            41 e0 9f bf,      is not UTF-8 (byte E0 at offset 1)
            41 e0 a0 80,      sound
            41 ed 9f bf,      sound
            41 ed a0 80,      is not UTF-8 (byte ED at offset 1)
            41 ef bf bf,      sound
            41 f0 8f bf bf,   is not UTF-8 (byte F0 at offset 1)
            41 f0 90 80 80,   sound
            41 f4 8f bf bf,   sound
            41 f4 90 80 80,   is not UTF-8 (byte F4 at offset 1)
            41 f5 80 80 80,   is not UTF-8 (byte F5 at offset 1)
            41 e2 82,         is not UTF-8 (byte E2 at offset 1)
            41 00 42,         holds a zero byte at offset 1
            ef bb bf 41,      starts with a byte order mark (EF BB BF)
            ff fe 7b 00,      is UTF-16
            fe ff 00 7b,      is UTF-16
            ff fe 00 00,      is UTF-32
            00 00 fe ff,      is UTF-32
            """)
    void strictUtf8(String hex, String expected) {
        assertEquals(expected, wrong(hex));
    }

    @Test
    void theProblemSaysWhere() {
        byte[] bytes = "{\n  \"words\": \"größer\"\n}\n".getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                Optional.of("needs/N-001.json:2:15: N-001: is not UTF-8 (byte F6 at offset 16);"
                        + " save it as UTF-8 without byte order mark."),
                problem(bytes).map(Problem::sentence));
    }

    @Test
    void columnsCountCharactersNotBytes() {
        byte[] bytes = "{}\n\u20ac\u20acX\n".getBytes(StandardCharsets.UTF_8);
        bytes[9] = (byte) 0xff;
        assertEquals(
                Optional.of("needs/N-001.json:2:3"),
                problem(bytes).map(found -> found.file() + ":" + found.line() + ":" + found.column()));
    }

    @Test
    void aBadByteFarBehindIsFound() {
        byte[] bytes = new byte[100_001];
        Arrays.fill(bytes, (byte) ' ');
        bytes[100_000] = (byte) 0xc3;
        assertEquals(
                Optional.of("is not UTF-8 (byte C3 at offset 100000)"),
                problem(bytes).map(Problem::wrong));
    }

    @Test
    void sizeHasBounds() {
        byte[] bytes = new byte[4 * 1024 * 1024];
        Arrays.fill(bytes, (byte) ' ');
        assertEquals(Optional.empty(), problem(bytes));
        byte[] more = Arrays.copyOf(bytes, bytes.length + 1);
        more[bytes.length] = ' ';
        assertEquals(Optional.of("is larger than 4 MiB"), problem(more).map(Problem::wrong));
        assertEquals(Optional.of("is empty (0 bytes)"), problem(new byte[0]).map(Problem::wrong));
    }
}
