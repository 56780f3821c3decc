package groupwright.definition.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import groupwright.definition.record.Address;
import groupwright.definition.record.Amount;
import groupwright.definition.record.Definition;
import groupwright.definition.record.Entry;
import groupwright.definition.record.RecordId;
import groupwright.definition.record.RecordKinds;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Saving changes what was changed and leaves everything else as it stood. */
class RecordWriterTest {
    private static final RecordId ID = new RecordId("R-001");
    private static final String TEXT = """
            {
              "id": "R-001",
              "note from another program": {"kept": [1, 2.50, "x"]},
              "kind": "function",
              "title": "Grades",
              "statement": "On a 12 % climb the rider shall hold at least 50 rpm.",
              "criteria": [
                {
                  "colour": "green",
                  "id": "k1",
                  "figure": "climb-cadence",
                  "parameters": {
                    "climb": "steep-12"
                  },
                  "comparator": "at-least",
                  "target": 50.0
                },
                {
                  "id": "k2",
                  "figure": "gear-range",
                  "comparator": "at-least",
                  "target": {
                    "value": 480.00,
                    "plusMinus": 1.50,
                    "why": "guess"
                  }
                }
              ],
              "verification": "analysis"
            }
            """;

    private static Definition read(String text) {
        TreeMap<String, byte[]> files = new TreeMap<>();
        files.put("project.json", "{\"id\": \"project\", \"name\": \"P\"}".getBytes(StandardCharsets.UTF_8));
        files.put("requirements/R-001.json", text.getBytes(StandardCharsets.UTF_8));
        Loading.Outcome outcome = Loading.load(files);
        assertEquals(List.of(), outcome.problems());
        return outcome.definition().orElseThrow();
    }

    private static String saved(Definition definition) {
        Entry record = definition.get(ID).orElseThrow();
        return new String(RecordWriter.write(record, TEXT.getBytes(StandardCharsets.UTF_8)), StandardCharsets.UTF_8);
    }

    /** The one line of plain values in an object is written over several; everything else comes back to the byte. */
    private static final String LAID_OUT =
            TEXT.replace("{\"kept\": [1, 2.50, \"x\"]}", "{\n    \"kept\": [1, 2.50, \"x\"]\n  }");

    @Test
    void nothingIsLostWhenNothingChanged() {
        assertEquals(LAID_OUT, saved(read(TEXT)));
    }

    @Test
    void oneChangedNumberChangesOneNumber() {
        Definition changed =
                read(TEXT).with(Address.parse("R-001.criteria.k1.target").orElseThrow(), Optional.of(Amount.of(52)));
        assertEquals(LAID_OUT.replace("\"target\": 50.0", "\"target\": 52"), saved(changed));
    }

    @Test
    void aBandThatGoesTakesNothingElseAlong() {
        Definition changed =
                read(TEXT).with(Address.parse("R-001.criteria.k2.target").orElseThrow(), Optional.of(Amount.of(480)));
        assertEquals(LAID_OUT.replace("\"plusMinus\": 1.50", "\"plusMinus\": 0"), saved(changed));
    }

    @Test
    void whatAnotherProgramAddedToAnEntryMovesWithIt() {
        Definition changed = read(TEXT).with(Address.parse("R-001.criteria.k2").orElseThrow(), Optional.empty());
        String expected = LAID_OUT.substring(0, LAID_OUT.indexOf(",\n    {\n      \"id\": \"k2\""))
                + LAID_OUT.substring(LAID_OUT.indexOf("\n  ],\n  \"verification\""));
        assertEquals(expected, saved(changed));
    }

    @Test
    void aFieldThatBecomesEmptyGoes() {
        Definition named = read(TEXT).with(Address.parse("R-001.owner").orElseThrow(), Optional.of("gearing lead"));
        assertEquals(
                LAID_OUT.replace("\"analysis\"\n", "\"analysis\",\n  \"owner\": \"gearing lead\"\n"), saved(named));
    }

    @Test
    void newFilesHoldOnlyWhatIsSaid() {
        Entry project = Defaults.of(
                RecordKinds.PROJECT.shape(), java.util.Map.of("id", RecordId.PROJECT, "name", "Äther \"x\"\n"));
        assertEquals(
                "{\n  \"id\": \"project\",\n  \"name\": \"Äther \\\"x\\\"\\n\"\n}\n",
                new String(RecordWriter.write(project), StandardCharsets.UTF_8));
    }
}
