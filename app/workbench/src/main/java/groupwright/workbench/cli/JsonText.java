package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.MissingInput;
import groupwright.definition.interchange.Json;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.problem.Problem;
import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;

/** Parts that all JSON answers share: the same value is always the same text, in a fixed order of keys. */
final class JsonText {
    static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private static final int FORMAT = 1;

    private JsonText() {}

    /** A new answer. */
    static ObjectNode start() {
        return NODES.objectNode().put("format", FORMAT);
    }

    static String of(JsonNode node) {
        return Json.text(node);
    }

    /** A number in the shortest text that reads back as the same number. */
    static JsonNode number(double value) {
        return DecimalNode.valueOf(new BigDecimal(ValueText.number(value)));
    }

    static <T> ArrayNode list(List<T> values, Function<? super T, ? extends JsonNode> each) {
        ArrayNode list = NODES.arrayNode();
        values.forEach(value -> list.add(each.apply(value)));
        return list;
    }

    static ArrayNode problems(List<Problem> problems) {
        return list(problems, JsonText::problem);
    }

    /** The answer where nothing else could be answered. */
    static ObjectNode problemsOnly(List<Problem> problems) {
        ObjectNode answer = start();
        answer.set("problems", problems(problems));
        return answer;
    }

    private static ObjectNode problem(Problem problem) {
        return NODES.objectNode()
                .put("file", problem.file())
                .put("line", problem.line())
                .put("column", problem.column())
                .put("record", problem.record())
                .put("field", problem.field())
                .put("wrong", problem.wrong())
                .put("remedy", problem.remedy());
    }

    static ObjectNode missing(MissingInput input) {
        return NODES.objectNode()
                .put("record", input.address().record().text())
                .put("field", input.address().field())
                .put("remedy", input.remedy());
    }
}
