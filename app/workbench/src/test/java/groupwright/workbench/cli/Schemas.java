package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Assertions;

/** The schemas the program carries. */
enum Schemas {
    CHECK,
    FIGURES,
    EXPLAIN,
    MOVES,
    GEARS,
    CASSETTES,
    PREDICT,
    DOCUMENTS,
    NEW,
    PROBLEMS;

    private static final ObjectMapper MAPPER =
            new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);

    /** Fails where a text is no JSON or breaks the schema. */
    void accepts(String json) {
        Assertions.assertEquals(Set.of(), problems(json), json);
    }

    /** Fails where a text keeps the schema. */
    void refuses(String json) {
        Assertions.assertNotEquals(Set.of(), problems(json), json);
    }

    private Set<ValidationMessage> problems(String json) {
        try {
            return schema().validate(MAPPER.readTree(json));
        } catch (IOException noJson) {
            throw new UncheckedIOException(json, noJson);
        }
    }

    private JsonSchema schema() throws IOException {
        return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(node());
    }

    /** The schema itself. */
    JsonNode node() throws IOException {
        String name = name().toLowerCase(Locale.ROOT);
        try (InputStream stream =
                CommandLineFace.class.getResourceAsStream("/groupwright/schemas/" + name + ".schema.json")) {
            return MAPPER.readTree(stream);
        }
    }
}
