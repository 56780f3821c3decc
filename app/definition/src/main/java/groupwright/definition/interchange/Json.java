package groupwright.definition.interchange;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;

/** JSON as we read and write it: no key twice, at most 100 levels, numbers exactly as written. */
public final class Json {
    private static final int DEEPEST = 100;

    static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(100)
                    .build())
            .build();

    static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);

    static final JsonMapper MAPPER = JsonMapper.builder(FACTORY)
            .nodeFactory(NODES)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private Json() {}

    /** Text known to be good, for example a default in a record's description. */
    static JsonNode ofConstant(String text) {
        try {
            return MAPPER.readTree(text);
        } catch (IOException broken) {
            throw new UncheckedIOException("a default in a record is no JSON: " + text, broken);
        }
    }

    /**
     * The bytes of a file: two blanks a level, lists of plain values on one line, a line feed at the end of each line.
     */
    public static byte[] bytes(JsonNode node) {
        return (text(node) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** The text of {@link #bytes} without the last line feed. */
    public static String text(JsonNode node) {
        StringBuilder text = new StringBuilder();
        write(node, 0, text);
        return text.toString();
    }

    private static void write(JsonNode node, int level, StringBuilder text) {
        if (node instanceof ObjectNode object && !object.isEmpty()) {
            writeObject(object, level, text);
        } else if (node instanceof ArrayNode array && hasObjects(array)) {
            writeLines(array, level, text);
        } else if (node instanceof ArrayNode array) {
            writeLine(array, text);
        } else {
            text.append(scalar(node));
        }
    }

    private static String scalar(JsonNode node) {
        return node.isBigDecimal() ? node.decimalValue().toString() : node.toString();
    }

    private static boolean hasObjects(ArrayNode array) {
        for (JsonNode element : array) {
            if (element.isContainerNode()) {
                return true;
            }
        }
        return false;
    }

    private static void writeObject(ObjectNode object, int level, StringBuilder text) {
        text.append("{\n");
        Iterator<Map.Entry<String, JsonNode>> fields = object.properties().iterator();
        while (fields.hasNext()) {
            Map.Entry<String, JsonNode> field = fields.next();
            indent(level + 1, text);
            text.append(NODES.textNode(field.getKey())).append(": ");
            write(field.getValue(), level + 1, text);
            text.append(fields.hasNext() ? ",\n" : "\n");
        }
        indent(level, text);
        text.append('}');
    }

    private static void writeLines(ArrayNode array, int level, StringBuilder text) {
        text.append("[\n");
        for (int i = 0; i < array.size(); i++) {
            indent(level + 1, text);
            write(array.get(i), level + 1, text);
            text.append(i + 1 < array.size() ? ",\n" : "\n");
        }
        indent(level, text);
        text.append(']');
    }

    private static void writeLine(ArrayNode array, StringBuilder text) {
        text.append('[');
        for (int i = 0; i < array.size(); i++) {
            text.append(i == 0 ? "" : ", ").append(scalar(array.get(i)));
        }
        text.append(']');
    }

    private static void indent(int level, StringBuilder text) {
        text.append("  ".repeat(level));
    }
}
