package groupwright.documents.project;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.record.RecordId;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class IdRunsTest {
    private static String text(String... ids) {
        List<RecordId> read =
                Arrays.stream(ids).map(id -> RecordId.parse(id).orElseThrow()).toList();
        return IdRuns.text(read);
    }

    @Test
    void threeNeighboursAreARangeTwoAreNot() {
        assertEquals("C-002, P-003–P-005, P-007, P-008", text("C-002", "P-003", "P-004", "P-005", "P-007", "P-008"));
    }

    @Test
    void aRangeStaysWithinOneKind() {
        assertEquals("G-001, G-002, N-003", text("G-001", "G-002", "N-003"));
        assertEquals("", text());
    }
}
