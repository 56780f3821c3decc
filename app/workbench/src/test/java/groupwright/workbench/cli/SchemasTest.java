package groupwright.workbench.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Iterator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the commands answer keeps the schemas that the program carries, on the small project and on the sample. */
class SchemasTest {
    private static final Path SAMPLE =
            Path.of("../../samples/tarnbeck").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    @BeforeEach
    void copy() {
        SmallProject.below(folder);
        SmallProject.copied(SAMPLE, folder.resolve("tarnbeck"));
    }

    @ParameterizedTest(name = "{1}")
    @CsvSource(delimiter = '|', textBlock = """
            CHECK     | check small
            CHECK     | check tarnbeck
            FIGURES   | figures small
            FIGURES   | figures small --workings
            FIGURES   | figures tarnbeck
            FIGURES   | figures tarnbeck --figure mass-predicted --figure climb-cadence --figure verdict --workings
            EXPLAIN   | explain small gear-range lead
            EXPLAIN   | explain tarnbeck claim-state K-011
            EXPLAIN   | explain tarnbeck coverage lead
            EXPLAIN   | explain tarnbeck climb-cadence lead G-002 climb=steep-12
            MOVES     | explain tarnbeck climb-cadence lead G-002 climb=steep-12 --moves
            MOVES     | explain tarnbeck average-speed lead G-002 --moves --change 10
            MOVES     | explain small gears lead --moves
            PREDICT   | predict tarnbeck
            PREDICT   | predict tarnbeck C-001 --riders G-003 --length 5 --headwind -10
            PREDICT   | predict small
            GEARS     | gears --rings 36,24 --cogs 11,12,14,16,18 --bead-seat 622 --tyre 57
            CASSETTES | cassettes --smallest 10 --largest 24 --cogs 6
            CASSETTES | cassettes --smallest 9-10 --largest 24-26 --cogs 5-6 --show 20 --ring 32
            CASSETTES | cassettes --smallest 10 --largest 20 --cogs 5 --largest-step 19 --with 13,14,15
            PROBLEMS  | cassettes --smallest 10 --largest 24 --cogs 6 --largest-step 8
            CASSETTES | cassettes --smallest 10 --largest 24 --cogs 6 --why 10,12,14,17,20,24 --neighbours 10,12,14,17,20,24
            CASSETTES | cassettes --smallest 10 --largest 24 --cogs 6 --why 10,11,13,17,20,24 --neighbours 10,12
            CASSETTES | cassettes --smallest 10 --largest 24 --cogs 6 --driver 10 --without 13 --why 10,11,13,17,20,24
            CASSETTES | cassettes --smallest 10 --largest 24 --cogs 6 --why 10,12
            CASSETTES | cassettes --smallest 10 --largest 44-45 --cogs 11 --largest-step 18.5@12 --mismatch 0.5 --for tarnbeck
            CASSETTES | cassettes --smallest 10 --largest 44 --cogs 11 --show 10 --for tarnbeck --concept C-003
            CASSETTES | cassettes --smallest 10 --largest 20 --cogs 4 --for small
            DOCUMENTS | documents small --only claims --out out
            DOCUMENTS | small
            NEW       | new fresh --name Fresh --currency CHF
            PROBLEMS  | chek
            PROBLEMS  | explain small gear-rnge
            PROBLEMS  | documents small --only claims --out small/project.json
            """)
    void answerKeepsItsSchema(Schemas schema, String line) {
        Run run = Run.in(folder, (line + " --json").split(" "));
        schema.accepts(run.out());
        assertTrue(run.out().startsWith("{\n  \"format\": 1,\n"), run.out());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check tarnbeck",
                "figures tarnbeck --workings",
                "explain tarnbeck unit-cost lead",
                "predict tarnbeck lead"
            })
    void sameBytesTwice(String line) {
        String[] arguments = (line + " --json").split(" ");
        assertEquals(Run.in(folder, arguments), Run.in(folder, arguments));
    }

    /** A schema that lets anything pass would prove nothing. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            FIGURES | "unit": "%"      | "units": "%"
            FIGURES | "value": 450     | "value": null
            FIGURES | "format": 1      | "format": 2
            FIGURES | "low": 450,      |
            FIGURES | "formulaVersion": 1 | "formulaVersion": 1, "missing": {"record": "C-001", "field": "f", "remedy": "r"}
            """)
    void anythingElseIsRefused(Schemas schema, String words, String others) {
        String out = Run.in(folder, "figures", "small", "--figure", "gear-range C-001", "--json")
                .out();
        schema.accepts(out);
        String broken = out.replace(words, others == null ? "" : others);
        assertTrue(!broken.equals(out), words + " is not in " + out);
        schema.refuses(broken);
    }

    /** Every object is closed, but the parameters of a figure, whose names belong to the figure. */
    @ParameterizedTest
    @EnumSource
    void objectsAreClosed(Schemas schema) throws IOException {
        assertEquals(
                "https://json-schema.org/draft/2020-12/schema",
                schema.node().get("$schema").asText());
        checkClosed("", schema.node());
    }

    private static void checkClosed(String at, JsonNode node) {
        if (node.path("properties").isObject() && node.path("type").asText().equals("object")) {
            assertTrue(node.path("additionalProperties").isBoolean(), at + " is open");
            assertTrue(!node.path("additionalProperties").asBoolean(), at + " is open");
        }
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            checkClosed(at + "/" + name, node.get(name));
        }
        if (node.isArray()) {
            node.forEach(element -> checkClosed(at + "/-", element));
        }
    }
}
