package groupwright.definition.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A field that holds what a missing field means is left out of a new file, whichever way its number is spelled. */
class DefaultsStayUnwrittenTest {
    private static String rewritten(String json) {
        Optional<Entry> record = RecordFile.read(
                        RecordKinds.PROJECT, "project.json", RecordId.PROJECT, json.getBytes(StandardCharsets.UTF_8))
                .record()
                .map(Entry.class::cast);
        return new String(RecordWriter.write(record.orElseThrow()), StandardCharsets.UTF_8);
    }

    @Test
    void numbersWithoutFractionCountAsDefaults() {
        String plain = "{\n  \"id\": \"project\",\n  \"name\": \"Small\"\n}\n";
        assertEquals(plain, rewritten(plain));
        assertEquals(
                plain,
                rewritten("{\"id\":\"project\",\"name\":\"Small\",\"format\":1,\"distinctGears_pct\":4.0,"
                        + "\"walkingSpeed_kmh\":4.50,\"allowanceWeighed_pct\":0}"));
    }

    @Test
    void otherNumbersAreWritten() {
        String changed = "{\n  \"id\": \"project\",\n  \"name\": \"Small\",\n  \"allowanceEstimated_pct\": 9\n}\n";
        assertEquals(changed, rewritten(changed));
    }
}
