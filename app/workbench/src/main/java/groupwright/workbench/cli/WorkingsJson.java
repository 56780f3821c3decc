package groupwright.workbench.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import groupwright.definition.figure.Ask;
import groupwright.definition.ledger.ValueText;
import groupwright.definition.ledger.View;
import groupwright.definition.ledger.Workings;
import groupwright.definition.record.Amount;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Workings as JSON: each question with its workings once, and only its answer where it is used again. */
final class WorkingsJson {
    private final View view;
    private final Set<Ask> shown = new HashSet<>();

    WorkingsJson(View view) {
        this.view = view;
    }

    /** A question, its answer and its workings. */
    ObjectNode of(Ask ask) {
        ObjectNode node = AnswerJson.of(ask, view.ask(ask), view.band(ask));
        if (shown.add(ask)) {
            node.set("workings", workings(view.explain(ask)));
        }
        return node;
    }

    private ObjectNode workings(Workings workings) {
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("name", workings.ask().figure().name())
                .put("formula", workings.ask().figure().formula())
                .put("source", workings.ask().figure().source())
                .put("leavesOut", workings.ask().figure().leavesOut());
        node.set("inputs", JsonText.list(workings.inputs(), WorkingsJson::input));
        node.set("alsoRead", JsonText.list(ReadText.of(workings.others()), JsonText.NODES::textNode));
        node.set("uses", JsonText.list(workings.uses(), use -> of(use.ask())));
        return node;
    }

    private static ObjectNode input(Workings.FieldInput input) {
        ObjectNode node = JsonText.NODES
                .objectNode()
                .put("record", input.address().record().text())
                .put("field", input.address().field());
        value(input.value()).ifPresent(value -> node.set("value", value));
        return node.put("unit", input.unit());
    }

    /** Nothing for an empty field. */
    private static Optional<JsonNode> value(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.flatMap(WorkingsJson::value);
        } else if (value instanceof Amount amount) {
            return Optional.of(amount(amount));
        } else if (value instanceof Integer whole) {
            return Optional.of(JsonText.NODES.numberNode(whole));
        } else if (value instanceof Double number) {
            return Optional.of(JsonText.number(number));
        } else if (value instanceof List<?> list) {
            ArrayNode array = JsonText.NODES.arrayNode();
            list.forEach(element -> value(element).ifPresent(array::add));
            return Optional.of(array);
        }
        return Optional.of(JsonText.NODES.textNode(ValueText.of(value)));
    }

    /** As in the files: a plain number, or one with its band. */
    private static JsonNode amount(Amount amount) {
        JsonNode number = JsonText.number(amount.value());
        if (!amount.isBanded()) {
            return number;
        }
        ObjectNode banded = JsonText.NODES.objectNode();
        banded.set("value", number);
        banded.set("plusMinus", JsonText.number(amount.plusMinus()));
        return banded;
    }
}
