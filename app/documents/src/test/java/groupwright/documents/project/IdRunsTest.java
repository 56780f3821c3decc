package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.record.RecordId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class IdRunsTest {
    private static List<RecordId> ids(String... ids) {
        return Arrays.stream(ids).map(id -> RecordId.parse(id).orElseThrow()).toList();
    }

    private static String text(String... ids) {
        return IdRuns.text(ids(ids));
    }

    @Test
    void threeNeighboursAreARangeTwoAreNot() {
        assertEquals("C-002, P-003–P-005, P-007, P-008", text("C-002", "P-003", "P-004", "P-005", "P-007", "P-008"));
    }

    @Test
    void manyRunsOfAKindAreCounted() {
        List<RecordId> ids = ids("C-002", "P-001", "P-003", "P-005", "P-007", "P-009", "R-001");
        assertEquals("C-002, 5 / P-001–P-009, R-001", IdRuns.counted(ids));
        assertEquals("C-002, P-001, P-003, P-005, P-007, P-009, R-001", IdRuns.text(ids));
    }

    @Test
    void aRangeStaysWithinOneKind() {
        assertEquals("G-001, G-002, N-003", text("G-001", "G-002", "N-003"));
        assertEquals("", text());
    }
}
