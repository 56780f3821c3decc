package groupwright.definition.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecordIdTest {
    @Test
    void orderIsLettersThenNumberThenText() {
        List<RecordId> ordered = new ArrayList<>();
        for (String text : List.of(
                "project", "A-999", "AB-001", "B-001", "B-0001", "R-002", "R-014", "R-999", "R-1000", "R-9999",
                "R-10000")) {
            ordered.add(new RecordId(text));
        }
        Collections.swap(ordered, 3, 4); // same number: by text, and 0 stands before 1
        List<RecordId> shuffled = new ArrayList<>(ordered);
        Collections.shuffle(shuffled, new Random(1));
        Collections.sort(shuffled);
        assertEquals(ordered, shuffled);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "R",
                "R-1",
                "R-01",
                "R-0000001",
                "r-001",
                "ABCD-001",
                "R-001 ",
                "R_001",
                "R-00a",
                "../R-001",
                "Project",
                "R-٠٠١",
                "R-001\n"
            })
    void whatIsNoIdIsRefused(String text) {
        assertEquals(Optional.empty(), RecordId.parse(text));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new RecordId(text))
                .getMessage()
                .contains("no record id"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 14, 999, 1000, 999_999})
    void anIdIsMadeFromLettersAndNumber(int number) {
        RecordId id = RecordId.of("R", number);
        assertEquals(number, id.number());
        assertEquals("R", id.letters());
        assertEquals(Optional.of(id), RecordId.parse(id.text()));
    }

    @Test
    void theProjectHasNeitherLettersNorNumber() {
        assertEquals("", RecordId.PROJECT.letters());
        assertEquals(0, RecordId.PROJECT.number());
    }
}
